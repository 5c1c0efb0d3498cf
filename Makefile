# make demo   build, then the demo job: plan, layouts and pieces in out/
# make picture  the demo job's plan as the README shows it, testdata/plan.png
# make screens  every screen of the page at three widths, light and dark, into
#             out/screens, to be looked at (Debian: chromium)
# make test   what the CI runs: vet and every test, on small samples
# make check-long   the same tests on all that there is to try; it takes hours
# make check-arm64   the golden drafts and layouts once more, built for arm64 and run
#             under qemu-aarch64-static (Debian: qemu-user-static), and the patterns and
#             layouts of jobs held against those of this processor, byte by byte
# make mutate  changes the code at random, one place at a time, and lists the changes
#             that no test sees: make mutate MUTANTS=40 SEEDS=2,3 IN="draft/... pieces"
# make faults  puts each fault of testdata/faults into the code and sees it refused
# make bench  the benchmarks, and the open-data instances where they are at hand,
#             whose densities go into testdata/density.csv: make bench BENCH_TIMES="10s 20m";
#             jigsaws, whose shortest layout is known, go into testdata/jigsaws.csv
# make curve  how short the open lays of the example jobs and of testdata/curve are over
#             processor time, into testdata/curve.csv; some 20 minutes
# make release  one file each for Linux, macOS and Windows on both usual processors, packed,
#             with checksums and sizes, into out/release
# make lint   gofmt, go vet, staticcheck

GO ?= go
SEEDS ?= 1
MUTANTS ?= 40
IN ?= draft/... fabric/... pieces/... nest/... cmd/ellwand/app/...
BENCH_TIMES ?= 10s 60s
BENCH_SEEDS ?= 1 2 3
BENCH_RECORD ?= testdata/density.csv
# Processor time of each of two workers, and the seeds of the sets, for jigsaws.
KNOWN_TIME ?= 10s
KNOWN_SETS ?= 1 2 3
KNOWN_RECORD ?= testdata/jigsaws.csv
# Processor time of each search, and the number of seeds, for lengths over time.
CURVE_TIME ?= 10s
CURVE_SEEDS ?= 5
CURVE_JOBS ?= $(wildcard testdata/*.yaml testdata/curve/*.yaml)
CURVE_RECORD ?= testdata/curve.csv
BENCH_DATA ?= ../shared/bench
# The tools of the tests, which ./... leaves out.
TOOLS := ./testdata/circles ./testdata/faults ./testdata/mutate ./testdata/release ./testdata/rounding ./testdata/sample
# The packages with golden files of bits.
GOLDEN := nest/portable nest draft
ARM64_JOBS := blouse princess trousers velvet kaftan
DEMO := testdata/blouse.yaml

.PHONY: all build demo picture screens test check-long check-arm64 mutate faults bench curve release lint clean

all: build

build:
	$(GO) build -buildvcs=auto -o bin/ellwand ./cmd/ellwand

demo: build
	bin/ellwand draft $(DEMO) -o out/pieces --force
	@echo
	bin/ellwand estimate $(DEMO) --effort quick --widths 115cm,140cm,150cm
	@echo
	bin/ellwand marker $(DEMO) -o out/plan.pdf --layout out/layouts --force

picture: build
	bin/ellwand marker $(DEMO) --passes 300 -o out/plan.png --force
	cp out/plan.png testdata/plan.png

screens:
	$(GO) test -count 1 -timeout 10m ./cmd/ellwand/page/browser/audit -run TestScreens -args -screens $(CURDIR)/out/screens

test:
	$(GO) vet ./... $(TOOLS)
	$(GO) test -timeout 14m ./... $(TOOLS)

check-long:
	ELLWAND_LONG=1 $(GO) test -timeout 12h ./...

# The golden files hold the last bits: they must be the same on every processor.
check-arm64:
	@command -v qemu-aarch64-static >/dev/null || { echo "qemu-aarch64-static is not installed"; exit 1; }
	@for package in $(GOLDEN); do \
		GOARCH=arm64 $(GO) test -c -o bin/arm64.test ./$$package && \
		(cd $$package && qemu-aarch64-static $(CURDIR)/bin/arm64.test -test.run GoldenFile -test.v) || exit; \
	done
	$(GO) build -o bin/ellwand ./cmd/ellwand
	GOARCH=arm64 $(GO) build -o bin/ellwand-arm64 ./cmd/ellwand
	rm -rf bin/here bin/there
	@for job in $(ARM64_JOBS); do for run in "here bin/ellwand" "there qemu-aarch64-static bin/ellwand-arm64"; do \
		set -- $$run; folder=bin/$$1/$$job; shift; mkdir -p $$folder; \
		XDG_CACHE_HOME=$(CURDIR)/$$folder/cache $$* marker testdata/$$job.yaml --passes 5 -o $$folder/plan.svg \
			--layout $$folder/layouts >/dev/null 2>&1 && rm -rf $$folder/cache || exit; \
	done; diff -r bin/here/$$job bin/there/$$job && echo "$$job: the same bits" || exit; done

mutate:
	$(GO) run ./testdata/mutate -seeds $(SEEDS) -mutants $(MUTANTS) $(IN)

faults:
	ELLWAND_LONG=1 $(GO) test -timeout 2h -v ./testdata/faults

bench:
	$(GO) build -buildvcs=auto -o bin/nestbench ./cmd/nestbench
	$(GO) test -run '^$$' -bench . -benchmem ./...
	@for file in $(wildcard $(BENCH_DATA)/*.json); do for time in $(BENCH_TIMES); do for seed in $(BENCH_SEEDS); do \
		bin/nestbench lay $$file --time $$time --seed $$seed --workers 2 --record $(BENCH_RECORD) || exit; \
	done; done; done
	@for sets in $(KNOWN_SETS); do \
		bin/nestbench known --time $(KNOWN_TIME) --sets $$sets --workers 2 --record $(KNOWN_RECORD) || exit; \
	done

curve:
	$(GO) build -buildvcs=auto -o bin/nestbench ./cmd/nestbench
	bin/nestbench curve $(CURVE_JOBS) --time $(CURVE_TIME) --seeds $(CURVE_SEEDS) --record $(CURVE_RECORD)

release:
	$(GO) run ./testdata/release -version $$(sed -n 's/^const version = "\(.*\)"/\1/p' cmd/ellwand/version.go)

lint:
	@unformatted=$$(gofmt -l cmd nest pieces draft fabric testdata); \
	if [ -n "$$unformatted" ]; then echo "gofmt: $$unformatted"; exit 1; fi
	$(GO) vet ./...
	$(GO) tool staticcheck ./...

clean:
	rm -rf bin out
