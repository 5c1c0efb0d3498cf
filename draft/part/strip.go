package part

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Figures of belts, ties and bias strips, in mm [source.CommonPractice].
const (
	beltBeyond    = 150 // how far a belt reaches beyond the waist
	usualTie      = 800
	usualWidth    = 1120
	joinAllowance = 10 // what each join of two strips takes from either
)

// belt is cut twice, a belt and its facing, with its length along the warp,
// which stretches least. One end runs to a point half as long as it is deep.
func belt(m Measures, o Options, name string) (Block, error) {
	length, depth := o.Length, o.FinishedDepth()
	if length == 0 {
		if m.Waist == 0 {
			return Block{}, construct.About(subject.WaistGirth).Refuse("%s: the waist girth is missing: measure it, or "+
				"give the belt's length",
				"%s: der Taillenumfang fehlt: messen Sie, oder geben Sie die Länge des Gürtels an", called(name))
		}
		length = m.Waist + beltBeyond
	}
	if length < 2*depth {
		return Block{}, construct.About(subject.Length, subject.Depth).Refuse(
			"%s: a length of %s is too short for a depth of %s; measure both again",
			"%s: eine Länge von %s ist zu kurz für eine Höhe von %s; messen Sie beide noch einmal",
			called(name), construct.Length(length),
			construct.Length(depth))
	}
	shoulder := length - depth/2
	corners := []orb.Point{{0, 0}, {depth, 0}, {depth, shoulder}, {depth / 2, length}, {0, shoulder}}
	piece := polygon(name, corners, seams.BuckleEnd, seams.Right, seams.PointRight, seams.PointLeft, seams.Left)
	piece.Cut = 2
	if o.Length == 0 {
		piece.Marks = []pieces.Mark{{Name: marks.WaistGirth,
			Path: construct.Line(orb.Point{0, m.Waist}, orb.Point{depth, m.Waist})}}
	}
	return Block{Pieces: []pieces.Piece{piece}}, nil
}

// tie is a strip folded double along its length, a pair.
func tie(_ Measures, o Options, name string) (Block, error) {
	length, depth := o.Length, o.FinishedDepth()
	if length == 0 {
		length = usualTie
	}
	piece := pieces.Rectangle(name, 2*depth, length)
	piece.Cut, piece.Pair = 2, true
	piece.Marks = []pieces.Mark{{Name: marks.FoldLine,
		Path: construct.Line(orb.Point{depth, 0}, orb.Point{depth, length})}}
	return Block{Pieces: []pieces.Piece{piece}}, nil
}

// biasStrip divides a length into equal strips that lie across the cloth on the
// bias: a strip of length l and width w takes (l + w)/√2 of the width of the
// cloth (geometry). Each join takes its allowance from both strips. A strip is
// cut to its width, so that its long edges have no allowance.
func biasStrip(_ Measures, o Options, name string) (Block, error) {
	if o.Length == 0 {
		return Block{}, construct.About(subject.Length).Refuse("%s: the length is missing: give the length of all "+
			"strips joined", "%s: die Länge fehlt: geben Sie die Länge aller Streifen zusammen an", called(name))
	}
	width, cloth := o.FinishedDepth(), o.ClothWidth
	if cloth == 0 {
		cloth = usualWidth
	}
	// The allowances of both ends lie beyond the strip's own length.
	most := float64(cloth*math.Sqrt2) - width - 2*joinAllowance
	if most < width {
		return Block{}, construct.About(subject.Depth).Refuse("%s: a strip %s wide cannot be cut on the bias from a "+
			"cloth %s wide; ask for a narrower strip",
			"%s: ein Streifen von %s Breite lässt sich aus einem %s breiten Stoff nicht schräg "+
				"schneiden; verlangen Sie einen schmaleren",
			called(name), construct.Length(width), construct.Length(cloth))
	}
	count := int(math.Ceil(o.Length/most - 1e-9))
	piece := pieces.Rectangle(name, width, o.Length/float64(count))
	piece.Cut, piece.Grain.Lie = count, pieces.Bias
	for i, edge := range []seams.Name{seams.LowerJoin, seams.RightRawEdge, seams.UpperJoin, seams.LeftRawEdge} {
		piece.Edges[i].Name = edge
	}
	return Block{
		Pieces: []pieces.Piece{piece},
		Pairings: []construct.Pairing{construct.Equal(name, fmt.Sprintf("strips joined, %d in all", count),
			float64(count)*construct.SeamLength(piece, seams.LeftRawEdge), "length asked for", o.Length)},
		Figures: []construct.Figure{{Name: "side of a square that gives the " + name +
			" in one, cut round continuously", Value: ContinuousSquare(o.Length, width)}},
	}, nil
}

// ContinuousSquare is the side of the square of cloth from which a continuous
// bias strip of a length and a width is cut: a square of side s gives s²/w of
// it (geometry, less the seams).
func ContinuousSquare(length, width float64) float64 { return math.Sqrt(length * width) }
