package pieces

import (
	"errors"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/seams"
)

// What is derived of a piece serves those that are alike in all that it may rest on,
// under whatever name, and no other.
func TestPerLineDerivesOnceOfPiecesAlike(t *testing.T) {
	t.Parallel()
	of := func() Piece {
		return Piece{Name: "pocket", Grain: Grain{To: orb.Point{0, 50}}, Edges: []Edge{
			{Name: seams.Waist, Path: Path{Line{From: orb.Point{0, 0}, To: orb.Point{50, 0}}}, Allowance: 10},
			{Name: seams.SideSeam, Path: Path{Line{From: orb.Point{50, 0}, To: orb.Point{0, 80}}}, Allowance: 10},
			{Name: seams.CentreBack, Path: Path{Line{From: orb.Point{0, 80}, To: orb.Point{0, 0}}}, Allowance: 10},
		}}
	}
	for name, change := range map[string]func(*Piece){
		"grain":      func(p *Piece) { p.Grain.Lie = Bias },
		"fold":       func(p *Piece) { p.Fold = seams.CentreBack },
		"allowance":  func(p *Piece) { p.Edges[0].Allowance, p.Edges[1].Allowance = 12, 8 },
		"hem":        func(p *Piece) { p.Edges[0].Hem = true },
		"included":   func(p *Piece) { p.Edges[0].Included = 3 },
		"unknown":    func(p *Piece) { p.Edges[0].Unknown = true },
		"edge name":  func(p *Piece) { p.Edges[0].Name = seams.Wrist },
		"edge count": func(p *Piece) { p.Edges = p.Edges[:2] },
		"curve": func(p *Piece) {
			p.Edges[1].Path = Path{Bezier{P0: orb.Point{50, 0}, P1: orb.Point{50, 9}, P2: orb.Point{9, 80},
				P3: orb.Point{0, 80}}}
		},
	} {
		derived := 0
		count := func(Piece) (int, error) { derived++; return derived, nil }
		var known PerLine[int]
		other := of()
		change(&other)
		renamed := of()
		renamed.Name, renamed.Garment, renamed.Cut = "flap", "coat 2", 4
		for _, step := range []struct {
			piece Piece
			want  int
		}{{of(), 1}, {renamed, 1}, {other, 2}, {of(), 1}, {other, 2}} {
			got, err := known.Of(step.piece, count)
			require.NoError(t, err)
			assert.Equal(t, step.want, got, name)
		}
	}
}

func TestPerLineForgetsWhatFailed(t *testing.T) {
	t.Parallel()
	var known PerLine[int]
	_, err := known.Of(Piece{Name: "one"}, func(p Piece) (int, error) { return 0, errors.New(p.Name) })
	require.EqualError(t, err, "one")
	_, err = known.Of(Piece{Name: "two"}, func(p Piece) (int, error) { return 0, errors.New(p.Name) })
	require.EqualError(t, err, "two")
}
