package store

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

type problem struct {
	cloth cloth.Cloth
	all   []pieces.Piece
}

func aProblem() problem {
	pocket := pieces.Rectangle("pocket", 200, 310)
	pocket.Cut = 5
	return problem{cloth: cloth.Cloth{Width: 900, Selvedge: 10, Step: 100}, all: []pieces.Piece{pocket}}
}

// Whatever of a problem changes, or of the program, changes its file.
func TestKeyIsTheWholeProblem(t *testing.T) {
	c := &Store{folder: "x", program: "1"}
	path := func(c *Store, p problem) string { return c.Path(p.cloth, p.all, lay.Kinds()) }
	first := path(c, aProblem())
	assert.Equal(t, first, path(c, aProblem()))
	for name, change := range map[string]func(*problem){
		"width":     func(p *problem) { p.cloth.Width += 1e-9 },
		"nap":       func(p *problem) { p.cloth.Nap = cloth.OneWay },
		"shrinkage": func(p *problem) { p.cloth.Shrinkage.Warp = 0.01 },
		"repeat":    func(p *problem) { p.cloth.Repeat.Along = 50 },
		"safety":    func(p *problem) { p.cloth.Safety.Share = 0.01 },
		"cut":       func(p *problem) { p.all[0].Cut = 6 },
		"pair":      func(p *problem) { p.all[0].Pair = true },
		"allowance": func(p *problem) { p.all[0].Edges[0].Allowance = 1 },
		"grain":     func(p *problem) { p.all[0].Grain.Lie = pieces.Bias },
		"outline":   func(p *problem) { p.all[0].Edges[0].Path = p.all[0].Edges[0].Path.Reverse() },
	} {
		changed := aProblem()
		change(&changed)
		assert.NotEqual(t, first, path(c, changed), name)
	}
	assert.NotEqual(t, first, path(&Store{folder: "x", program: "2"}, aProblem()), "another program")
	assert.NotEqual(t, first, c.Path(aProblem().cloth, aProblem().all, lay.Kinds()[:1]))
}

func TestSpoiltFileCountsAsNone(t *testing.T) {
	c := &Store{folder: t.TempDir(), program: "1"}
	p := aProblem()
	path := c.Path(p.cloth, p.all, lay.Kinds())
	for _, text := range []string{"", "{", "null", `{"found":{"Taken":-1}}`,
		`{"found":{"Taken":5,"Bound":9},"effort_ns":{}}`, `{"found":{"Taken":5}}`} {
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		_, known := c.Read(path)
		assert.False(t, known, text)
	}
	_, known := (*Store)(nil).Read(path)
	assert.False(t, known)
	(*Store)(nil).Write(path, Kept{})
}
