// Package rules turns the rules of the cloth into plain geometry: the turns of each
// piece (grain, nap), edges pinned to a fold, positions on a lattice (the repeat),
// zones (flaws), and outlines as they are cut.
package rules

import (
	"errors"
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/motion"
	"ellwand/nest/layout"
	"ellwand/pieces"
)

// baseTurn is the turn that all others are reckoned from: the first one up the
// lay.
func (t Template) baseTurn() layout.Turn {
	for _, turn := range t.Turns {
		if turn.Direction == upTheLay {
			return turn
		}
	}
	return t.Turns[0]
}

// Template is a piece as it is chalked in one lay: what is laid, how often,
// and in which turns. Each template becomes one layout.Item.
type Template struct {
	Source  int          // index of the piece it came from
	Asked   pieces.Piece // as it came: a half, when cut on the fold
	Piece   pieces.Piece
	Outline orb.Ring
	Copies  int
	Yields  int
	First   int // number of its first copy, from 1
	OnFold  bool
	// FromLower says that it is cut from the lower of two plies alone.
	FromLower bool
	Turns     []layout.Turn
	// image maps the outline onto itself, for a cut-on-fold piece laid whole
	// and for single pieces that two plies give alike.
	Image   pieces.Motion
	IsAlike bool
}

// Demand is how many of a piece are to come out of one bed.
type Demand struct {
	Source  int // index of the piece
	Piece   pieces.Piece
	outline orb.Ring // its cutting outline as it is laid
	Cut     int
	// first is the number of its first template in this bed, from 1.
	first int
	// isSmall among all pieces of the bed.
	isSmall bool
}

// DemandsOf asks a single bed for everything. It fails when a piece has no
// sound cutting outline.
func DemandsOf(all []pieces.Piece) ([]Demand, error) {
	out := make([]Demand, len(all))
	var faults []error
	var outlines pieces.PerLine[orb.Ring]
	for i, piece := range all {
		outline, err := outlines.Of(piece, cuttingOutline)
		faults = append(faults, err)
		out[i] = Demand{Source: i, Piece: piece, outline: outline, Cut: piece.Cut, first: 1}
	}
	return out, errors.Join(faults...)
}

// Of asks the same for another number of the piece.
func (d Demand) Of(cut, first int) Demand {
	d.Cut, d.first = cut, first
	return d
}

// cuttingOutline of a piece as it is laid: fewer points, nowhere inside the
// true line.
func cuttingOutline(piece pieces.Piece) (orb.Ring, error) {
	outline, err := piece.CuttingOutline(fineTolerance)
	if err != nil {
		return nil, err
	}
	return outward(outline, outwardTolerance-fineTolerance), nil
}

// fitTolerance absorbs rounding, in mm, when a piece just fits the width
// [source.OwnChoice].
const fitTolerance = 1e-6

// Across is the extent of a turned outline in y.
func Across(outline orb.Ring, turn layout.Turn) float64 {
	m := motion.MotionOf(turn.Degrees, turn.Mirrored, 0, 0)
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range outline {
		y := m.Apply(p)[1]
		low, high = math.Min(low, y), math.Max(high, y)
	}
	return high - low
}
