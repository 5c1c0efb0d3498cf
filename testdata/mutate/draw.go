package main

import (
	_ "embed"
	"maps"
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// drawn is a change that is tried.
type drawn struct {
	mutant
	seeds    []uint64 // that drew it
	number   int      // of its switch
	edit     edit
	switched bool
	caughtBy string // package whose tests failed; empty as long as it survives
}

// draw takes so many changes that build for each seed, at random. One that several
// seeds draw is one.
func (c *code) draw(seeds []uint64, count int) []*drawn {
	l := &lots{code: c, all: c.mutants(), built: map[int]bool{}, known: map[int]*drawn{}}
	for _, seed := range seeds {
		left := count
		for _, i := range shuffled(len(l.all), seed) {
			if left == 0 {
				break
			}
			if l.builds(i) {
				left--
				l.take(i, seed)
			}
		}
	}
	return l.taken
}

func shuffled(count int, seed uint64) []int {
	out := make([]int, count)
	for i := range out {
		out[i] = i
	}
	random := rand.New(rand.NewPCG(seed, 0))
	random.Shuffle(count, func(i, j int) { out[i], out[j] = out[j], out[i] })
	return out
}

// lots are the changes that can be drawn, and those that were.
type lots struct {
	*code
	all   []mutant
	built map[int]bool
	known map[int]*drawn
	taken []*drawn
}

func (l *lots) builds(i int) bool {
	if _, tried := l.built[i]; !tried {
		m := l.all[i]
		l.built[i] = l.code.builds(m.of, map[string]string{m.file: l.changed(m)})
	}
	return l.built[i]
}

func (l *lots) take(i int, seed uint64) {
	if l.known[i] == nil {
		l.known[i] = &drawn{mutant: l.all[i], number: len(l.taken)}
		l.taken = append(l.taken, l.known[i])
	}
	l.known[i].seeds = append(l.known[i].seeds, seed)
}

// changed is the text of a file with a change.
func (c *code) changed(m mutant) string {
	source := c.sources[m.file]
	return source[:m.from] + m.with + source[m.to:]
}

//go:embed switch.txt
var switches string

// switchImports is what switch.txt imports.
var switchImports = []string{"os", "strconv", "strings", "sync/atomic"}

// switchFile is the file that a package with switched changes has besides its own.
const switchFile = "mutate_switches.go"

// textsOf are the files of a package with some of its changes, each behind its switch.
func (c *code) textsOf(of, folder string, count int, changes []*drawn) map[string]string {
	edits := map[string][]edit{}
	for _, d := range changes {
		if d.of == of {
			edits[d.file] = append(edits[d.file], d.edit)
		}
	}
	out := map[string]string{}
	for file, some := range edits {
		out[file] = weave(c.sources[file], some)
		out[filepath.Join(filepath.Dir(file), switchFile)] = strings.NewReplacer("NAME", c.packages[of].Types.Name(),
			"FOLDER", folder, "COUNT", strconv.Itoa(count)).Replace(switches)
	}
	return out
}

// plant finds the changes that can be switched, alone and together, and gives the texts
// of all files with them.
func (c *code) plant(folder string, changes []*drawn) map[string]string {
	all := map[string]string{}
	for of := range c.packages {
		var fit []*drawn
		for _, d := range changes {
			var ok bool
			if d.edit, ok = c.switched(d.mutant, d.number); d.of != of || !ok || crosses(fit, d) {
				continue
			}
			d.switched = c.builds(of, c.textsOf(of, folder, len(changes), append(slices.Clone(fit), d)))
			if d.switched {
				fit = append(fit, d)
			}
		}
		maps.Copy(all, c.textsOf(of, folder, len(changes), fit))
	}
	return all
}

// crosses reports whether a change would replace the operator that another one does.
func crosses(others []*drawn, d *drawn) bool {
	return d.edit.until > d.edit.at && slices.ContainsFunc(others, func(o *drawn) bool {
		return o.file == d.file && o.edit.until > o.edit.at && o.edit.at == d.edit.at
	})
}
