// Package drafttest measures drafts for the tests of the blocks.
package drafttest

import (
	"math"
	"strings"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/construct"
	"ellwand/pieces"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// Path is the path of an edge of a piece, which must have it.
func Path(t require.TestingT, p pieces.Piece, edge seams.Name) pieces.Path {
	e, ok := p.Edge(edge)
	require.True(t, ok, "%s has no edge %q", p.Name, edge)
	return e.Path
}

// Corner is the inner angle in degrees where an edge of a piece runs into the
// next.
func Corner(t require.TestingT, p pieces.Piece, edge seams.Name) float64 {
	for i, e := range p.Edges {
		if e.Name == edge {
			next := p.Edges[(i+1)%len(p.Edges)].Path
			in, out := e.Path[len(e.Path)-1].Tangent(1), next[0].Tangent(0)
			return 180 - math.Atan2(in[0]*out[1]-in[1]*out[0], in[0]*out[0]+in[1]*out[1])*180/math.Pi
		}
	}
	require.Fail(t, "no edge "+edge.String())
	return 0
}

// SheetsAreWhole checks that every step of drafts by hand has a figure for each
// place that asks for one, and none that cannot be measured.
func SheetsAreWhole(t require.TestingT, sheets []construct.Sheet) {
	require.NotEmpty(t, sheets)
	for _, sheet := range sheets {
		for _, step := range sheet.Steps {
			text := step.Text(measure.Centimetre)
			assert.Equal(t, strings.Count(step.Do, "{}"), len(step.Lengths), text)
			assert.NotContains(t, text, "{}")
			for _, length := range step.Lengths {
				assert.GreaterOrEqual(t, length, 0.0, text)
			}
		}
	}
}

// Drafted is a block as drafted, which must not be refused.
func Drafted[M, O, B any](t require.TestingT, draft func(M, O) (B, error), m M, o O) B {
	block, err := draft(m, o)
	require.NoError(t, err)
	return block
}

// Refuses checks that each change of measures and options is refused with the
// words that stand for it.
func Refuses[M, O, B any](t require.TestingT, draft func(M, O) (B, error), m M, o O, changes map[string]func(*M, *O)) {
	for want, change := range changes {
		measures, options := m, o
		change(&measures, &options)
		_, err := draft(measures, options)
		assert.ErrorContains(t, err, want)
	}
}
