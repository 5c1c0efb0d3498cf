package store

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

func aProblem() (cloth.Cloth, []pieces.Piece) {
	pocket := pieces.Rectangle("pocket", 200, 310)
	pocket.Cut = 5
	return cloth.Cloth{Name: "shell", Width: 900, Selvedge: 10, Step: 100}, []pieces.Piece{pocket}
}

func aPlan() lay.Plan {
	return lay.Plan{Lay: lay.Open, Pieces: []lay.Laid{{Name: "pocket", Turn: 180, X: 200, Y: 310.25}}}
}

// Whatever of a problem changes, changes its key; what the cloth is called does not.
func TestKeyIsTheWholeProblem(t *testing.T) {
	c, all := aProblem()
	first := Key(c, all)
	for name, change := range map[string]func(*cloth.Cloth, *pieces.Piece){
		"width":     func(c *cloth.Cloth, _ *pieces.Piece) { c.Width += 1e-9 },
		"nap":       func(c *cloth.Cloth, _ *pieces.Piece) { c.Nap = cloth.OneWay },
		"shrinkage": func(c *cloth.Cloth, _ *pieces.Piece) { c.Shrinkage.Warp = 0.01 },
		"repeat":    func(c *cloth.Cloth, _ *pieces.Piece) { c.Repeat.Along = 50 },
		"safety":    func(c *cloth.Cloth, _ *pieces.Piece) { c.Safety.Share = 0.01 },
		"cut":       func(_ *cloth.Cloth, p *pieces.Piece) { p.Cut = 6 },
		"pair":      func(_ *cloth.Cloth, p *pieces.Piece) { p.Pair = true },
		"allowance": func(_ *cloth.Cloth, p *pieces.Piece) { p.Edges[0].Allowance = 1 },
		"grain":     func(_ *cloth.Cloth, p *pieces.Piece) { p.Grain.Lie = pieces.Bias },
		"outline":   func(_ *cloth.Cloth, p *pieces.Piece) { p.Edges[0].Path = p.Edges[0].Path.Reverse() },
	} {
		changed, others := aProblem()
		change(&changed, &others[0])
		assert.NotEqual(t, first, Key(changed, others), name)
	}
	c.Name = "remnant"
	assert.Equal(t, first, Key(c, all))
	assert.NotEqual(t, first, Key(c, all, 5))
}

// A field that a later version adds and a problem does not use changes no key.
func TestKeyLeavesOutWhatIsEmpty(t *testing.T) {
	type before struct{ Width float64 }
	type after struct {
		Width float64
		Sheen string
	}
	assert.Equal(t, Key(cloth.Cloth{}, nil, before{5}), Key(cloth.Cloth{}, nil, after{Width: 5}))
	assert.NotEqual(t, Key(cloth.Cloth{}, nil, before{5}), Key(cloth.Cloth{}, nil, after{Width: 5, Sheen: "matt"}))
}

func TestWhatIsAddedIsRead(t *testing.T) {
	s := &Store{folder: filepath.Join(t.TempDir(), "kept")}
	usual, long := Search{Seed: 1, Effort: "usual"}, Search{Seed: 1, Effort: "long"}
	assert.Empty(t, s.Read("a").Plans())
	s.Add("a", []lay.Plan{aPlan()}, &usual)
	got := s.Read("a")
	assert.Equal(t, []lay.Plan{aPlan()}, got.Plans())
	assert.True(t, got.Has(usual) && got.IsOnlyOf(usual) && !got.Has(long))

	folded := aPlan()
	folded.Lay = lay.FoldedAlong
	s.Add("a", []lay.Plan{folded}, nil)
	got = s.Read("a")
	assert.Len(t, got.Plans(), 2, "a lay that was not asked stays")
	assert.True(t, got.Has(usual) && !got.Has(long))
	listed, err := os.ReadDir(s.folder)
	require.NoError(t, err)
	assert.Len(t, listed, 1, "nothing beside it")

	var none *Store
	none.Add("a", []lay.Plan{aPlan()}, &usual)
	assert.Empty(t, none.Read("a").Plans())
}

const sound = `{"format_version":1,"searched":[],"lays":[{"lay":"open","folded_in_mm":0,"pieces":[{"name":"a","x_mm":1}]}]}`

// summed gives a text the right sum, where it is an entry at all.
func summed(text string) string {
	var in file
	if json.Unmarshal([]byte(text), &in) != nil {
		return text
	}
	return strings.Replace(text, `"searched"`, `"sum":"`+sumOf(in)+`","searched"`, 1)
}

// A number that is changed by accident is found out.
func TestSumFindsAChangedNumber(t *testing.T) {
	_, err := Parse([]byte(summed(sound)))
	require.NoError(t, err)
	_, err = Parse([]byte(strings.Replace(summed(sound), `"x_mm":1`, `"x_mm":2`, 1)))
	require.Error(t, err)
}

// What is no entry is found out, and dropped.
func TestSpoiltEntriesAreDropped(t *testing.T) {
	s := &Store{folder: t.TempDir()}
	write := func(text string) {
		require.NoError(t, os.WriteFile(s.path("a"), []byte(text), 0o600))
	}
	write(summed(sound))
	require.Len(t, s.Read("a").Plans(), 1)
	for _, text := range []string{
		"", "{", "null", "[]", sound[:len(sound)-9], sound + "{}",
		strings.Replace(sound, `"format_version":1`, `"format_version":2`, 1),
		strings.Replace(sound, `"open"`, `"upside down"`, 1),
		strings.Replace(sound, `"x_mm":1`, `"x_mm":1e308`, 1),
		strings.Replace(sound, `"x_mm":1`, `"x_mm":1e999`, 1),
		strings.Replace(sound, `"x_mm":1`, `"turn_deg":1e9`, 1),
		strings.Replace(sound, `"x_mm":1`, `"part":-1`, 1),
		strings.Replace(sound, `"x_mm":1`, `"length_mm":1`, 1),
		strings.Replace(sound, `[{"name":"a","x_mm":1}]`, `[]`, 1),
		sound + strings.Repeat(" ", mostBytes),
	} {
		write(summed(text))
		assert.Empty(t, s.Read("a").Plans(), "%.80s", text)
		assert.NoFileExists(t, s.path("a"), "%.80s", text)
	}
}

// The oldest entries go when there are too many, and what a killed process left.
func TestTheStoreIsBounded(t *testing.T) {
	s := &Store{folder: t.TempDir()}
	old := time.Now().Add(-48 * time.Hour)
	for _, name := range []string{"b.json", "c.json", ".new-1"} {
		path := filepath.Join(s.folder, name)
		require.NoError(t, os.WriteFile(path, nil, 0o600))
		require.NoError(t, os.Truncate(path, fullAt/2))
		require.NoError(t, os.Chtimes(path, old, old))
		old = old.Add(time.Hour)
	}
	s.Add("a", []lay.Plan{aPlan()}, nil)
	assert.NoFileExists(t, s.path("b"), "the oldest")
	assert.FileExists(t, s.path("c"))
	assert.FileExists(t, s.path("a"))
	assert.NoFileExists(t, filepath.Join(s.folder, ".new-1"))
}

// Whatever bytes are kept, they are an entry within bounds or none.
func FuzzParse(f *testing.F) {
	f.Add([]byte(summed(sound)))
	f.Add([]byte(summed(strings.Replace(sound, `"x_mm":1`, `"x_mm":1e308`, 1))))
	f.Add([]byte(sound[:40]))
	f.Fuzz(func(t *testing.T, data []byte) {
		entry, err := Parse([]byte(summed(string(data))))
		if err != nil {
			return
		}
		for _, p := range entry.Plans() {
			require.NotEmpty(t, p.Pieces)
			for _, l := range p.Pieces {
				require.Less(t, max(l.X, -l.X, l.Y, -l.Y), farthest)
			}
		}
	})
}
