package bound

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/nest/layout"
)

func twoSquares() layout.Problem {
	return layout.Problem{Width: 10, Items: []layout.Item{{
		Outline: orb.Ring{{0, 0}, {4, 0}, {4, 4}, {0, 4}}, Copies: 2, Turns: []layout.Turn{{}},
	}}}
}

// A bound is found once a problem, and again for every problem that differs in anything.
func TestMemoTellsProblemsApart(t *testing.T) {
	changes := map[string]func(p *layout.Problem){
		"width":     func(p *layout.Problem) { p.Width = 11 },
		"zones":     func(p *layout.Problem) { p.Zones = []orb.Ring{{{0, 0}, {1, 0}, {1, 1}}} },
		"gap":       func(p *layout.Problem) { p.Gap = 1e-9 },
		"clearance": func(p *layout.Problem) { p.ClearHigh = 1 },
		"outline":   func(p *layout.Problem) { p.Items[0].Outline[1][0] = 4.0000001 },
		"core":      func(p *layout.Problem) { p.Items[0].Core = orb.Ring{{1, 1}, {3, 1}, {2, 2}} },
		"copies":    func(p *layout.Problem) { p.Items[0].Copies = 3 },
		"turn":      func(p *layout.Problem) { p.Items[0].Turns[0].Degrees = 45 },
		"pin":       func(p *layout.Problem) { p.Items[0].Turns[0].Pin = layout.PinHigh },
		"turns":     func(p *layout.Problem) { p.Items[0].Turns = append(p.Items[0].Turns, layout.Turn{}) },
		"tilt":      func(p *layout.Problem) { p.Items[0].Tilt = 1 },
		"group":     func(p *layout.Problem) { p.Items[0].Group = 1 },
		"lattice":   func(p *layout.Problem) { p.Items[0].PeriodY = 2 },
		"items":     func(p *layout.Problem) { p.Items = append(p.Items, twoSquares().Items...) },
	}
	var kept memo
	found := 0
	find := func(layout.Problem) float64 { found++; return float64(found) }
	assert.Equal(t, 1.0, kept.of(twoSquares(), find))
	assert.Equal(t, 1.0, kept.of(twoSquares(), find), "the same problem in other memory")
	for name, change := range changes {
		p, before := twoSquares(), found
		change(&p)
		got := kept.of(p, find)
		assert.Equal(t, before+1, found, name)
		assert.Equal(t, got, kept.of(p, find), name)
	}
}

func TestMemoForgetsTheOldest(t *testing.T) {
	var kept memo
	found := 0
	ask := func(i int) {
		p := twoSquares()
		p.Width += float64(i)
		kept.of(p, func(layout.Problem) float64 { found++; return 1 })
	}
	for i := range mostKept + 1 {
		ask(i)
	}
	assert.Len(t, kept.kept, mostKept)
	ask(1)
	ask(mostKept)
	assert.Equal(t, mostKept+1, found, "those that are kept are not found again")
	ask(0)
	assert.Equal(t, mostKept+2, found, "the oldest is")
}
