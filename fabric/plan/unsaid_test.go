package plan_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/fabrictest"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
)

// Several of a piece that has a right and a left, all the same way up, are told of, and so
// are outlines of unknown allowance.
func TestWhatWasNotSaidIsNoted(t *testing.T) {
	askew := fabrictest.Rectangle("back", 300, 200, 2)
	last := len(askew.Edges) - 1
	moved := askew.Edges[last].Path.Start()
	moved[0] += 60
	askew.Edges[last-1].Path = pieces.Path{pieces.Line{From: askew.Edges[last-1].Path.Start(), To: moved}}
	askew.Edges[last].Path = pieces.Path{pieces.Line{From: moved, To: askew.Edges[last].Path.End()}}
	pair, single := askew, askew
	pair.Pair, single.Cut = true, 1
	unknown := fabrictest.Rectangle("back", 300, 200, 2)
	for i := range unknown.Edges {
		unknown.Edges[i].Allowance, unknown.Edges[i].Unknown = 0, true
	}
	plain, alike := cloth.Cloth{Width: 520, Selvedge: 10}, cloth.Cloth{Width: 520, Selvedge: 10, Alike: true}
	for name, c := range map[string]struct {
		cloth cloth.Cloth
		piece pieces.Piece
		want  []lay.NoteKind
	}{
		"one hand":              {plain, askew, []lay.NoteKind{lay.OneHanded}},
		"a pair":                {plain, pair, nil},
		"one alone":             {plain, single, nil},
		"both sides alike":      {alike, askew, nil},
		"rectangles":            {plain, fabrictest.Rectangle("back", 300, 200, 2), nil},
		"nobody knows how much": {plain, unknown, []lay.NoteKind{lay.AllowanceUnknown}},
	} {
		t.Run(name, func(t *testing.T) {
			got, err := plan.Require(t.Context(), c.cloth, []pieces.Piece{c.piece}, fabrictest.Brief)
			require.NoError(t, err)
			var kinds []lay.NoteKind
			for _, note := range got.Lays[0].Notes {
				if note.Of == lay.OneHanded || note.Of == lay.AllowanceUnknown {
					kinds = append(kinds, note.Of)
					assert.Equal(t, []string{"back"}, note.Pieces)
				}
			}
			assert.Equal(t, c.want, kinds)
		})
	}
}
