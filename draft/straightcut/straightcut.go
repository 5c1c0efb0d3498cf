package straightcut

import (
	"fmt"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Block is a straight-cut garment as drafted.
type Block struct {
	Pieces   []pieces.Piece
	Sheets   []construct.Sheet
	Pairings []construct.Pairing
	Warnings []construct.Sentence
}

// usual values of each shape, in mm; 0 where there is none [source.OwnChoice].
var usual = map[Shape]struct {
	name                       string
	length, ease, width, depth float64
	shortest, longest          float64
}{
	Kaftan:  {"kaftan", 1200, 300, 0, 0, 500, 1700},
	Kimono:  {"kimono", 1100, 200, 0, 0, 600, 1700},
	Wrapper: {"wrapper", 1000, 0, 0, 0, 200, 1500},
	Apron:   {"apron", 500, 0, 0, 0, 200, 1200},
	Bag:     {"bag", 400, 0, 380, 100, 80, 1200},
}

// figures are the lengths that a shape is drawn from.
type figures struct {
	Measures
	Options
	name string
}

// Draft drafts the garment. The error is a sentence that names the measurement
// or option that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	values, ok := usual[o.Shape]
	if !ok {
		return Block{}, fmt.Errorf("straight cut: there is no shape with the number %d", o.Shape)
	}
	f := figures{m, o, values.name}
	for _, l := range []struct {
		name  string
		asked *float64
		usual float64
	}{{"length", &f.Length, values.length}, {"ease", &f.Ease, values.ease}, {"width", &f.Width, values.width}, {"depth", &f.Depth, values.depth}} {
		if *l.asked < 0 {
			return Block{}, construct.Refuse("%s: the %s is %s; it cannot be negative", f.name, l.name, construct.Length(*l.asked))
		}
		if *l.asked == 0 {
			*l.asked = l.usual
		}
	}
	if o.Depth == 0 {
		f.Depth = min(f.Depth, f.Width, f.Length)
	}
	if f.Length < values.shortest || f.Length > values.longest {
		return Block{}, construct.About(subject.Length).Refuse("%s: a length of %s cannot be; ask for %s to %s", f.name,
			construct.Length(f.Length), construct.AtLeast(values.shortest), construct.AtMost(values.longest))
	}
	switch o.Shape {
	case Kaftan:
		return f.kaftan()
	case Kimono:
		return f.kimono()
	case Wrapper:
		return f.wrapper()
	case Apron:
		return f.apron()
	}
	return f.bag()
}

// strip is a rectangle that is folded double along its length, so many times
// the finished width wide.
func strip(name string, length, finished float64, cut int) pieces.Piece {
	piece := pieces.Rectangle(name, 2*finished, length)
	piece.Cut = cut
	piece.Marks = []pieces.Mark{{Name: marks.FoldLine, Path: construct.Line(orb.Point{finished, 0}, orb.Point{finished, length})}}
	return piece
}

// named gives the edges of a rectangle their names, from the bottom
// counter-clockwise; those that are hems fold up.
func named(piece pieces.Piece, hems map[seams.Name]bool, names ...seams.Name) pieces.Piece {
	for i := range piece.Edges {
		piece.Edges[i].Name, piece.Edges[i].Hem = names[i], hems[names[i]]
	}
	return piece
}

// rectangleSheet is the draft of a rectangle.
func rectangleSheet(name string, width, height float64, widthRule, heightRule string) construct.Sheet {
	s := construct.Sheet{Piece: name}
	corner := s.Start(0, 0, "the lower left corner")
	right := s.Right(corner, width, widthRule)
	up := s.Up(corner, height, heightRule)
	s.Draw("complete the rectangle "+construct.Numbers(corner, right, up), "")
	return s
}

// fuller is the fuller of bust and hip.
func (f figures) fuller() float64 { return max(f.Bust, f.Hip) }
