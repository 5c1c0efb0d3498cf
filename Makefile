# make demo   build, then the demo job: plan, layouts and pieces in out/
# make test   what the CI runs: vet and every test
# make bench  the benchmarks, and the open-data instances where they are at hand
# make lint   gofmt, go vet, staticcheck

GO ?= go
BENCH_TIME ?= 10s
BENCH_DATA ?= ../shared/bench
DEMO := testdata/blouse.yaml

.PHONY: all build demo test bench lint clean

all: build

build:
	$(GO) build -o bin/ellwand ./cmd/ellwand

demo: build
	bin/ellwand draft $(DEMO) -o out/pieces --force
	@echo
	bin/ellwand estimate $(DEMO) --time 1s --widths 115cm,140cm,150cm
	@echo
	bin/ellwand marker $(DEMO) --time 2s -o out/plan.pdf --layout out/layouts --force

test:
	$(GO) vet ./...
	$(GO) test -timeout 14m ./...

bench: build
	$(GO) test -run '^$$' -bench . -benchmem ./...
	@for file in $(wildcard $(BENCH_DATA)/*.json); do \
		bin/ellwand bench $$file --time $(BENCH_TIME) --json || exit; done

lint:
	@unformatted=$$(gofmt -l cmd nest pieces draft fabric); \
	if [ -n "$$unformatted" ]; then echo "gofmt: $$unformatted"; exit 1; fi
	$(GO) vet ./...
	$(GO) tool staticcheck ./...

clean:
	rm -rf bin out
