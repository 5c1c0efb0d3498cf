package plan_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/check"
	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/rules"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// drops of a curtain, 2,480 mm long with hem and heading, the grainline turned round so
// that any turn shows.
func drops(width float64) pieces.Piece { return fabrictest.Rectangle("drop", width, 2480, 4) }

// Four drops on a repeat of 640 mm, one to the width: each begins at a whole number of
// repeats, 2,560 mm after the other, and none lies upside down. Plain they take four
// lengths, 9,920 mm, so that matching takes 240 mm more.
func TestCurtainsHangSideBySide(t *testing.T) {
	c := cloth.Cloth{Name: "print", Width: 1400, Selvedge: 10,
		Repeat: cloth.Repeat{Along: 640, SideBySide: []string{"drop"}}}
	options := fabrictest.Brief
	options.Lays = []lay.Kind{lay.Open}
	all := []pieces.Piece{drops(1300)}
	got, err := plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	assert.InDelta(t, 3*2560+2480, got.Length, 0.01)
	assert.InDelta(t, 240, got.Matching.Extra(), 0.01)
	p := got.Lays[0]
	assert.Equal(t, []string{"lower edges of drop, which hang side by side, along the warp"}, words.Matches(p, all))
	for _, l := range p.Pieces {
		assert.InDelta(t, 0, math.Remainder(l.Outline.Bound().Min[0]-p.Pieces[0].Outline.Bound().Min[0], 640), 1)
		assert.Equal(t, p.Pieces[0].Grain[1][0] > p.Pieces[0].Grain[0][0], l.Grain[1][0] > l.Grain[0][0])
	}
	// The proof refuses one that lies upside down, and one off the repeat.
	for name, spoil := range map[string]func(l *lay.Laid){
		"upside down": func(l *lay.Laid) {
			centre := l.Outline.Bound().Center()
			l.Turn, l.X, l.Y = math.Mod(l.Turn+180, 360), 2*centre[0]-l.X, 2*centre[1]-l.Y
			l.Grain[0], l.Grain[1] = l.Grain[1], l.Grain[0]
		},
		"off the repeat": func(l *lay.Laid) {
			l.X -= 20
			for i := range l.Outline {
				l.Outline[i][0] -= 20
			}
			l.Grain[0][0], l.Grain[1][0] = l.Grain[0][0]-20, l.Grain[1][0]-20
		},
	} {
		spoiled := inLay(t, c, lay.Open, all...)
		spoil(&spoiled.Pieces[2])
		assert.ErrorContains(t, check.Plan(spoiled, all), name)
	}
	// Without the maker's word nothing joins them, and that is said.
	c.Repeat.SideBySide = nil
	plain := inLay(t, c, lay.Open, all...)
	assert.Empty(t, plain.Matches)
	assert.Equal(t, []string{"drop"}, words.Unmatched(plain, all))
	// None of them is upside down on a print that is not even all the same.
	got, err = plan.Require(t.Context(), c, all, fabrictest.Brief)
	require.NoError(t, err)
	for _, p := range got.Lays {
		if p.Lay == lay.FoldedAcross {
			assert.ErrorContains(t, words.Refused(c, p.Why[0]), "the pattern of the upper ply runs the other way")
		}
		for _, l := range p.Pieces {
			assert.Equal(t, p.Pieces[0].Grain[1][0] > p.Pieces[0].Grain[0][0], l.Grain[1][0] > l.Grain[0][0], "%s", p.Lay)
		}
	}
	turned := inLay(t, c, lay.Open, all...)
	l := &turned.Pieces[2]
	centre := l.Outline.Bound().Center()
	l.Turn, l.X, l.Y = math.Mod(l.Turn+180, 360), 2*centre[0]-l.X, 2*centre[1]-l.Y
	l.Grain[0], l.Grain[1] = l.Grain[1], l.Grain[0]
	assert.ErrorContains(t, check.Plan(turned, all), "upside down")
}

// Gores are sewn to each other: their copies match along the cloth, whatever it costs.
// Six of 300 by 700 mm, two to a width of 620 mm, begin at multiples of 240: at 0, 720
// and 1,440 mm.
func TestCopiesThatAreSewnTogetherMatch(t *testing.T) {
	gore := fabrictest.Rectangle("gore", 300, 700, 6)
	gore.Edges[1].Name, gore.Edges[3].Name = seams.RightSide, seams.LeftSide
	c := cloth.Cloth{Name: "stripe", Width: 620, Selvedge: 10, Repeat: cloth.Repeat{Along: 240}}
	p := inLay(t, c, lay.Open, gore)
	assert.InDelta(t, 1440+700, p.Taken, 0.01)
	assert.Equal(t, []string{"side seam of gore, along the warp"}, words.Matches(p, []pieces.Piece{gore}))
}

// Across the cloth copies that are sewn together, or hang side by side, lie alike on the
// stripes: two of 300 mm in 600 mm on stripes of 100 mm, but not of 80, where the second
// would begin at 320.
func TestCopiesLieAlikeAcross(t *testing.T) {
	gore, drop := fabrictest.Rectangle("gore", 300, 700, 6), fabrictest.Rectangle("drop", 300, 700, 6)
	gore.Edges[1].Name, gore.Edges[3].Name = seams.RightSide, seams.LeftSide
	c := cloth.Cloth{Name: "stripe", Width: 620, Selvedge: 10}
	for _, piece := range []pieces.Piece{gore, drop} {
		c.Repeat = cloth.Repeat{Across: 100}
		if piece.Name == "drop" {
			c.Repeat.SideBySide = []string{"drop"}
		}
		p := inLay(t, c, lay.Open, piece)
		assert.InDelta(t, 2100, p.Taken, 0.01)
		assert.Equal(t, []string{"copies of " + piece.Name + ", which lie alike, across"},
			words.Matches(p, []pieces.Piece{piece}))
		c.Repeat.Across = 80
		p = inLay(t, c, lay.Open, piece)
		assert.InDelta(t, 4200, p.Taken, 0.01)
		l := &p.Pieces[0]
		l.Y += 20
		for i := range l.Outline {
			l.Outline[i][1] += 20
		}
		l.Grain[0][1], l.Grain[1][1] = l.Grain[0][1]+20, l.Grain[1][1]+20
		assert.ErrorContains(t, check.Plan(p, []pieces.Piece{piece}), "off the repeat")
	}
}

// Seams are matched by what they are, in every garment by itself, the most important
// first; the side of a bodice is not that of the skirt below it.
func TestJoinsAreSeams(t *testing.T) {
	dress := append(fabrictest.DraftedBlouse("12"), fabrictest.Skirt()...)
	for i := range dress {
		dress[i].Garment = "dress"
	}
	side := func(name string, long float64) pieces.Piece {
		p := fabrictest.Rectangle(name, 200, long, 2)
		p.Pair, p.Garment = true, "skirt"
		p.Edges[1].Name, p.Edges[3].Name = seams.SideSeam, seams.CentreFront
		return p
	}
	all := append(dress, side("front", 600), side("back", 605), side("frill", 300))
	var said []string
	for _, j := range rules.JoinsOf(cloth.Repeat{Along: 90}, all) {
		line := j.Name.String() + ":"
		for _, i := range j.Pieces {
			line += " " + all[i].Name
		}
		said = append(said, line)
	}
	assert.Equal(t, []string{
		"centre front seam: front back frill", "side seam: front bodice back bodice", "side seam: front back",
		"front armhole: front bodice sleeve", "centre back seam: back bodice", "back armhole: back bodice sleeve",
		"side: front back",
	}, said)
	named := rules.JoinsOf(cloth.Repeat{Along: 90,
		Matches: []marks.Name{marks.BackArmhole, marks.OfSeam(seams.SideSeam)}}, all)
	require.Len(t, named, 3)
	assert.Equal(t, marks.BackArmhole, named[0].Name)
	assert.Equal(t, []marks.Name{marks.OfSeam(seams.SideSeam), marks.OfSeam(seams.SideSeam)},
		[]marks.Name{named[1].Name, named[2].Name})
}

// A repeat that is not even forbids turning what is matched: two wedges that would make a
// rectangle head to foot do not. On an even one they do.
func TestUnevenRepeatForbidsTurning(t *testing.T) {
	wedge := fabrictest.Polygon("wedge", [2]float64{0, 0}, [2]float64{400, 0}, [2]float64{0, 400})
	wedge.Cut, wedge.Pair = 2, true
	c := cloth.Cloth{Name: "print", Width: 420, Selvedge: 10, Alike: false, Repeat: cloth.Repeat{Along: 10}}
	uneven := inLay(t, c, lay.Open, wedge, fabrictest.Rectangle("bar", 100, 100, 1))
	for _, l := range uneven.Pieces {
		if l.Name == "wedge" {
			assert.Equal(t, uneven.Pieces[0].Grain[1][0] > uneven.Pieces[0].Grain[0][0], l.Grain[1][0] > l.Grain[0][0])
		}
	}
	c.Repeat.Across, c.Repeat.Along = 10, 0
	all := []pieces.Piece{wedge}
	options := fabrictest.Brief
	options.Lays = []lay.Kind{lay.FoldedAcross, lay.Open}
	got, err := plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	assert.Contains(t, words.WhyNot(got.Lays[1]), "the pattern of the upper ply runs the other way")
	c.Repeat.Even = true
	got, err = plan.Require(t.Context(), c, all, options)
	require.NoError(t, err)
	assert.True(t, got.Lays[1].Possible(), words.WhyNot(got.Lays[1]))
}
