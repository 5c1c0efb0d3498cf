package check_test

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/pieces"
)

// TestCheckFindsFaults breaks a sound plan in every way that the check must
// see.
func TestCheckFindsFaults(t *testing.T) {
	all := append(fabrictest.Blouse(), fabrictest.OnGrain(fabrictest.Rectangle("band", 60, 200, 2), pieces.CrossGrain))
	goods := cloth.Cloth{Name: "velvet", Width: 1020, Selvedge: 10, Nap: cloth.OneWay}
	got := fabrictest.Required(t, goods, all...)
	for _, c := range []struct {
		name  string
		lay   int
		spoil func(*lay.Plan)
		want  string
	}{
		{"piece missing", 0, func(p *lay.Plan) { p.Pieces = p.Pieces[1:] }, "are wanted"},
		{"piece too many", 1, func(p *lay.Plan) { p.Pieces = append(p.Pieces, p.Pieces[0]) }, "are wanted"},
		{"unknown piece", 0, func(p *lay.Plan) { p.Pieces[0].Name = "sock" }, "sock was not asked for"},
		{"outline moved", 0, func(p *lay.Plan) { shift(&p.Pieces[0], -1, 0) }, "not inside the outline"},
		{"over the end", 0, func(p *lay.Plan) { p.Length -= 1 }, "hangs over the cloth"},
		{"over the side", 1, func(p *lay.Plan) { p.Width = 100 }, "hangs over the cloth"},
		{"two right", 0, func(p *lay.Plan) { at(p, "side panel", true).Mirrored = false }, "2 right and 0 left"},
		{"off the fold", 1, func(p *lay.Plan) {
			front := at(p, "front", at(p, "front", false) == nil)
			front.Y++
			shift(front, 0, 1)
		}, "its fold edge is not on the fold"},
		{"half away from a fold", 1, func(p *lay.Plan) { at(p, "front", at(p, "front", false) == nil).OnFold = false },
			"wrongly laid to the fold"},
		{"turned round", 0, func(p *lay.Plan) { turnRound(at(p, "side panel", false)) }, "lies against the nap"},
		{"band turned round", 0, func(p *lay.Plan) { turnRound(at(p, "band", false)) }, "lies against the nap"},
		{"off the grain", 0, func(p *lay.Plan) { at(p, "cuff", false).Turn += 2 }, "its grainline lies wrongly"},
	} {
		t.Run(c.name, func(t *testing.T) {
			plan := got.Lays[c.lay]
			plan.Pieces = append([]lay.Laid(nil), plan.Pieces...)
			require.NoError(t, check.Plan(plan, all))
			c.spoil(&plan)
			assert.ErrorContains(t, check.Plan(plan, all), c.want)
		})
	}
}

// at finds the first template of a piece that lies face down, or face up.
func at(p *lay.Plan, name string, mirrored bool) *lay.Laid {
	for i := range p.Pieces {
		if p.Pieces[i].Name == name && p.Pieces[i].Mirrored == mirrored {
			return &p.Pieces[i]
		}
	}
	return nil
}

func shift(l *lay.Laid, dx, dy float64) {
	moved := make(orb.Ring, len(l.Outline))
	for i, p := range l.Outline {
		moved[i] = orb.Point{p[0] + dx, p[1] + dy}
	}
	l.Outline = moved
}

// turnRound turns a piece end for end about the middle of its outline.
func turnRound(l *lay.Laid) {
	c := l.Outline.Bound().Center()
	turned := func(p orb.Point) orb.Point { return orb.Point{2*c[0] - p[0], 2*c[1] - p[1]} }
	for i := range l.Grain {
		l.Grain[i] = turned(l.Grain[i])
	}
	outline := make(orb.Ring, len(l.Outline))
	for i, p := range l.Outline {
		outline[i] = turned(p)
	}
	l.Outline = outline
	l.Turn += 180
	l.X, l.Y = 2*c[0]-l.X, 2*c[1]-l.Y
}
