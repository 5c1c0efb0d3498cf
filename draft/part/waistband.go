package part

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// waistSeam is the length of the seam that a waistband is sewn to: that asked
// for, that of the skirt or trousers, or the waist girth with its ease.
func waistSeam(m Measures, o Options, name string) (float64, error) {
	switch {
	case o.Length > 0:
		return o.Length - WaistbandOverlap, nil
	case m.WaistSeam > 0:
		return m.WaistSeam, nil
	case m.Waist > 0:
		return m.Waist + waistbandEase, nil
	}
	return 0, construct.About(subject.WaistGirth).Refuse("%s: the waist girth is missing: measure it, or give the "+
		"waistband's length",
		"%s: der Taillenumfang fehlt: messen Sie, oder geben Sie die Länge des Bunds an", called(name))
}

// waistband is straight and folded double along its middle.
func waistband(m Measures, o Options, name string) (Block, error) {
	seam, err := waistSeam(m, o, name)
	if err != nil {
		return Block{}, err
	}
	return bandBlock(m, o, folded(name, seam+WaistbandOverlap, o.FinishedDepth())), nil
}

// bandBlock sets a waistband, less what it overlaps, against the waist seam of
// the skirt or trousers.
func bandBlock(m Measures, o Options, band pieces.Piece) Block {
	block := Block{Pieces: []pieces.Piece{band}}
	if m.WaistSeam > 0 && o.Length == 0 {
		length := construct.SeamLength(band, seams.Bottom) - WaistbandOverlap
		block.Pairings = []construct.Pairing{construct.Equal("waistband to waist", band.Name+", less the overlap",
			length, "waist seam", m.WaistSeam)}
	}
	return block
}

// shapedWaistband is a stretch of a ring: its lower edge as long as the waist
// seam, its upper edge as long as the waist girth with the ease of that seam, its
// depth between them (geometry). Its end is prolonged straight, to button
// over. It is a pair: one is faced with the other.
func shapedWaistband(m Measures, o Options, name string) (Block, error) {
	lower, err := waistSeam(m, o, name)
	if err != nil {
		return Block{}, err
	}
	depth := o.FinishedDepth()
	upper := m.Waist + m.WaistEase
	if m.Waist == 0 || m.WaistSeam == 0 || lower-upper < 1 {
		piece := pieces.Rectangle(name, lower+WaistbandOverlap, depth)
		piece.Cut, piece.Pair = 2, true
		return bandBlock(m, o, piece), nil
	}
	angle := (lower - upper) / depth
	if angle > 0.9*math.Pi {
		return Block{}, construct.About(subject.WaistGirth).Refuse("%s: the waist girth of %s is too small for a "+
			"waist seam of %s only %s below it; ask for a straight waistband",
			"%s: der Taillenumfang von %s ist zu klein für eine Taillennaht von %s nur %s darunter; "+
				"verlangen Sie einen geraden Bund", called(name), construct.Length(m.Waist),
			construct.Length(lower), construct.Length(depth))
	}
	return bandBlock(m, o, ringBand(name, lower/angle, depth, angle)), nil
}

// ringBand draws a stretch of a ring, symmetrical about the upright through
// its middle, hollow side up, and its prolonged end on the right.
func ringBand(name string, radius, depth, angle float64) pieces.Piece {
	centre := orb.Point{0, radius}
	begin := -math.Pi/2 - angle/2
	lower := pieces.Arc{Centre: centre, Radius: radius, Begin: begin, Sweep: angle}
	upper := pieces.Arc{Centre: centre, Radius: radius - depth, Begin: begin + angle, Sweep: -angle}
	on := lower.Tangent(1)
	low, high := construct.Go(lower.End(), on, WaistbandOverlap), construct.Go(upper.Start(), on, WaistbandOverlap)
	return pieces.Piece{
		Name: name, Cut: 2, Pair: true,
		Edges: []pieces.Edge{
			construct.Edge(seams.Bottom, construct.Join(pieces.Path{lower}, construct.Line(lower.End(), low))),
			construct.Edge(seams.OverlapEnd, construct.Line(low, high)),
			construct.Edge(seams.Top, construct.Join(construct.Line(high, upper.Start()), pieces.Path{upper})),
			construct.Edge(seams.End, construct.Line(upper.End(), lower.Start())),
		},
		Grain: pieces.Grain{From: orb.Point{0, float64(0.2 * depth)}, To: orb.Point{0, float64(0.8 * depth)}},
		Marks: []pieces.Mark{{Name: marks.Overlap, Path: construct.Line(lower.End(), upper.Start())}},
	}
}
