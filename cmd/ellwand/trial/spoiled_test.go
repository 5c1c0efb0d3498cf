package trial

import (
	"encoding/json"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/layoutfile"
	"ellwand/testdata/check"
	"ellwand/testdata/sample"
)

// spoiling breaks one rule of the cutting room in a layout.
type spoiling struct {
	name string
	// spoil breaks it, and reports false where the layout has nothing to break.
	spoil func(f *layoutfile.File) bool
	// want is what the checker says of it.
	want string
}

// Every layout of the example jobs is found right, and every copy of one that
// is spoiled in one rule is refused for that rule: so the checker is able to
// find what it looks for. The long run spoils every layout in every way.
func TestSpoiledLayoutsAreRefused(t *testing.T) {
	sound := exampleLayouts(t)
	folder := t.TempDir()
	var paths []string
	wanted, times := map[string]string{}, map[string]int{}
	for _, name := range slices.Sorted(maps.Keys(sound)) {
		file := sound[name]
		paths = append(paths, writeLayout(t, folder, name, file))
		for _, s := range spoilings {
			if times[s.name] >= sample.Of(8, 1000) {
				continue
			}
			var copied layoutfile.File
			require.NoError(t, json.Unmarshal(encoded(t, file), &copied))
			if s.spoil(&copied) {
				path := writeLayout(t, folder, name+" "+s.name, copied)
				wanted[path] = s.want
				times[s.name]++
				paths = append(paths, path)
			}
		}
	}
	said, _ := check.Run(t, append([]string{"lay"}, paths...)...)
	faults := map[string]string{}
	for line := range strings.Lines(said) {
		if path, sentence, found := strings.Cut(line, ": "); found {
			faults[path] += sentence
		}
	}
	for _, path := range paths {
		if want, isSpoiled := wanted[path]; isSpoiled {
			assert.Contains(t, faults[path], want, path)
		} else {
			assert.Empty(t, faults[path], path)
		}
	}
	for _, s := range spoilings {
		assert.NotZero(t, times[s.name], "no layout has anything to break for: %s", s.name)
	}
	t.Logf("%d layouts, %d spoiled copies", len(sound), len(wanted))
}

var spoilings = []spoiling{
	{"over the end", func(f *layoutfile.File) bool { return moved(f, last(f), 40, 0) }, "hangs over the edge or the end"},
	{"over the selvedge", func(f *layoutfile.File) bool { return moved(f, 0, 0, -f.Width) },
		"hangs over the edge or the end"},
	{"one over another", func(f *layoutfile.File) bool {
		a, b := twoAlike(f)
		return b > 0 && moved(f, b, f.Pieces[a].Outline.Bound().Min[0]-f.Pieces[b].Outline.Bound().Min[0],
			f.Pieces[a].Outline.Bound().Min[1]-f.Pieces[b].Outline.Bound().Min[1])
	}, "lie over one another"},
	{"too near", func(f *layoutfile.File) bool { _, b := twoAlike(f); f.Gap = 1e4; return b > 0 },
		"apart, and the gap is"},
	{"one too few", func(f *layoutfile.File) bool { f.Pieces = f.Pieces[1:]; return true }, "come out of the lay, and"},
	{"one too many asked", func(f *layoutfile.File) bool { f.Asked[0].Count++; return true }, "come out of the lay, and"},
	{"two right", func(f *layoutfile.File) bool {
		return firstLaid(f, func(i int, l layoutfile.Laid) bool {
			return !f.Alike && f.Asked[l.Piece].Pair && len(f.Parts[l.Part].Plies) == 1 && turnedOver(f, i)
		})
	}, "right and"},
	{"off the fold", func(f *layoutfile.File) bool {
		return firstLaid(f, func(i int, l layoutfile.Laid) bool { return l.OnFold && moved(f, i, 0, 1) })
	}, "has its fold edge not on the fold"},
	{"a half away from the fold", func(f *layoutfile.File) bool {
		return firstLaid(f, func(i int, l layoutfile.Laid) bool {
			f.Pieces[i].OnFold = false
			return l.OnFold
		})
	}, "is not laid as such"},
	{"against the nap", func(f *layoutfile.File) bool {
		if f.Nap == "either way" || len(f.Pieces) < 2 {
			return false
		}
		for i := range f.Asked {
			f.Asked[i].Nap, f.Nap = "one way", "one way"
		}
		return firstLaid(f, func(i int, l layoutfile.Laid) bool { return !l.OnFold && turned(f, i, 180) })
	}, "lies against the nap"},
	{"against the nap of its garment", func(f *layoutfile.File) bool {
		return f.Nap == "one way per garment" && firstLaid(f, func(i int, l layoutfile.Laid) bool {
			others := slices.IndexFunc(f.Pieces,
				func(o layoutfile.Laid) bool { return o.Garment == l.Garment && o.Piece != l.Piece })
			return others >= 0 && !l.OnFold && turned(f, i, 180)
		})
	}, "lies against the nap of"},
	{"a turn that is not allowed", func(f *layoutfile.File) bool {
		return firstLaid(f, func(i int, l layoutfile.Laid) bool {
			f.Pieces[i].Turnings = []layoutfile.Turning{{Turn: l.Turn + 90, Mirrored: l.Mirrored}}
			return true
		})
	}, "not among the turns that it may have"},
	{"off the grain", func(f *layoutfile.File) bool { return turned(f, 0, 20) }, "has its grainline"},
	{"face down", func(f *layoutfile.File) bool {
		return !f.Alike && firstLaid(f, func(_ int, l layoutfile.Laid) bool {
			isLeft := l.Mirrored || len(f.Parts[l.Part].Plies) > 1
			asked := &f.Asked[l.Piece]
			if !isLeft || !asked.Pair || asked.Garment == "kaftan" || asked.Name != "sleeve" && asked.Name != "front" {
				return false // those of the kaftan, cuffs and bands are their own mirror images
			}
			asked.Pair = false
			return true
		})
	}, "comes out face down"},
	{"on a flaw of the upper ply", func(f *layoutfile.File) bool {
		return firstLaid(f, func(_ int, l layoutfile.Laid) bool {
			plies := f.Parts[l.Part].Plies
			upper := &plies[len(plies)-1]
			upper.Flaws = append(upper.Flaws, layoutfile.Flaw{Name: "hole", Outline: middleOf(l)})
			return len(plies) == 2
		})
	}, "lies on hole in the ply with its right side down"},
	{"on a flaw of the cloth", func(f *layoutfile.File) bool {
		l := f.Pieces[0]
		on, hole := f.Parts[l.Part].Plies[0].OnCloth, middleOf(l)
		for i, p := range hole {
			hole[i] = orb.Point{on.X + float64(on.SignX)*p[0], on.Y + float64(on.SignY)*p[1]}
		}
		f.ClothFlaws = append(f.ClothFlaws, layoutfile.Flaw{Name: "hole", Outline: hole})
		return true
	}, "lies on hole of the cloth"},
	{"on a place not to be used", func(f *layoutfile.File) bool {
		f.Flaws = append(f.Flaws, middleOf(f.Pieces[0]))
		return true
	},
		"lies on a place of the lay that may not be used"},
	{"off the stripes across", func(f *layoutfile.File) bool { return mismatched(f, "along", orb.Point{20, 20}) },
		"off the repeat along"},
	{"off the stripes along", func(f *layoutfile.File) bool { return mismatched(f, "across", orb.Point{20, 20}) },
		"off the repeat across"},
	{"centre off its line", func(f *layoutfile.File) bool {
		if f.Repeat == nil || f.Repeat.Across == 0 || len(f.Repeat.Centred) == 0 {
			return false
		}
		f.Repeat.CentreLine += 7
		return true
	}, "off its line of the repeat"},
	{"part ends too soon", func(f *layoutfile.File) bool {
		return firstLaid(f, func(_ int, l layoutfile.Laid) bool { // which is the first that reaches so far
			end := &f.Parts[l.Part].End
			if reaches := l.Outline.Bound().Max[0]; reaches > *end-20 {
				*end = reaches - 10
				return true
			}
			return false
		})
	}, "hangs over the edge or the end"},
	{"part ends too late", func(f *layoutfile.File) bool { f.Parts[0].End += f.Length; return true }, "runs from"},
	{"fold elsewhere", func(f *layoutfile.File) bool {
		return firstPart(f, func(p *layoutfile.Part) bool {
			if len(p.Folds) == 0 {
				return false
			}
			p.Folds[0].At += 1
			return true
		})
	}, "its plies do not meet there"},
	{"a ply too few", func(f *layoutfile.File) bool {
		return firstPart(f, func(p *layoutfile.Part) bool {
			isDouble := len(p.Plies) > 1
			p.Plies = p.Plies[len(p.Plies)-1:]
			return isDouble
		})
	}, "right sides down"},
	{"a ply turned over", func(f *layoutfile.File) bool { f.Parts[0].Plies[0].RightSide = "down"; return true },
		"cannot be down"},
	{"a ply beside the cloth", func(f *layoutfile.File) bool {
		f.Parts[0].Plies[0].OnCloth.Y -= f.ClothWidth
		return true
	}, "reaches over the edge of the cloth"},
	{"two plies of one place", func(f *layoutfile.File) bool {
		return firstPart(f, func(p *layoutfile.Part) bool {
			if len(p.Plies) != 2 {
				return false
			}
			lower, upper := p.Plies[0], &p.Plies[1]
			upper.OnCloth = lower.OnCloth
			upper.OnCloth.SignX *= -1
			upper.OnCloth.X = 2*lower.OnCloth.X + float64(lower.OnCloth.SignX)*(p.X+p.End)
			return lower.OnCloth.X == 0
		})
	}, "cut from the same place"},
	{"more cloth than is taken", func(f *layoutfile.File) bool { f.Taken *= 0.9; return true }, "take more than"},
	{"another outline", func(f *layoutfile.File) bool {
		box := f.Pieces[0].Outline.Bound()
		shrunk := f.Pieces[0].Outline
		for i, p := range shrunk {
			shrunk[i] = orb.Point{p[0] + (box.Center()[0]-p[0])*0.1, p[1]}
		}
		return true
	}, "has not the outline that was asked"},
	{"another piece", func(f *layoutfile.File) bool { f.Pieces[0].Name = "gusset"; return true },
		"is not the piece that it says"},
	{"a later form", func(f *layoutfile.File) bool { f.Version++; return true }, "format version"},
}
