package pieces

import (
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"

	"ellwand/pieces/seams"
)

func TestIsOwnImage(t *testing.T) {
	rectangle := []orb.Point{{0, 0}, {80, 0}, {80, 120}, {0, 120}}
	standing := []orb.Point{{0, 0}, {80, 0}, {40, 120}}
	lying := []orb.Point{{0, 0}, {120, 40}, {0, 80}}
	askew := []orb.Point{{0, 0}, {120, 0}, {100, 80}, {0, 90}}
	for name, c := range map[string]struct {
		lie           GrainLie
		points        []orb.Point
		plain, napped bool
	}{
		"rectangle":                   {StraightGrain, rectangle, true, true},
		"rectangle on either grain":   {EitherGrain, rectangle, true, true},
		"standing":                    {StraightGrain, standing, true, true},
		"standing on the cross grain": {CrossGrain, standing, true, false},
		"standing on either grain":    {EitherGrain, standing, true, false},
		"lying":                       {StraightGrain, lying, true, false},
		"lying on the cross grain":    {CrossGrain, lying, true, true},
		"askew":                       {StraightGrain, askew, false, false},
	} {
		t.Run(name, func(t *testing.T) {
			p := polygon(c.points, 10)
			p.Grain = Grain{From: orb.Point{20, 10}, To: orb.Point{20, 60}, Lie: c.lie}
			assert.Equal(t, c.plain, p.IsOwnImage(false))
			assert.Equal(t, c.napped, p.IsOwnImage(true))
			turned := p.Map(Turn(30))
			assert.Equal(t, c.napped, turned.IsOwnImage(true), "wherever it lies")
			p.Notches = []Notch{{Edge: p.Edges[0].Name, At: 5, Count: 1}}
			assert.False(t, p.IsOwnImage(false), "a notch on one side")
			p.Fold = seams.Called("fold")
			assert.True(t, p.IsOwnImage(true), "a half on the fold")
		})
	}
}
