package bodice

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/seams"
)

// waistSeam is the waist of one piece: stretches of seam with a dart between
// each and the next.
type waistSeam struct {
	stretches []pieces.Path
	darts     []pieces.Dart
	mouths    []pieces.Path
	// below is set in place of all these when the bodice goes on below the
	// waist.
	below *below
}

// foot is the lower end of the centre line.
func (w waistSeam) foot() orb.Point {
	if w.below != nil {
		return orb.Point{0, -w.below.length}
	}
	return orb.Point{0, 0}
}

// length of the seam with its darts closed.
func (w waistSeam) length() float64 {
	sum := 0.0
	for _, s := range w.stretches {
		sum += s.Length()
	}
	return sum
}

// drawWaist draws the waist seam from the centre line, square to it, to the
// foot of the side seam, square to that; it meets both legs of every dart
// squarely, so that it runs smoothly when they are closed.
func drawWaist(side pieces.Path, darts []waistDart) waistSeam {
	var w waistSeam
	from, leaving := orb.Point{0, 0}, orb.Point{1, 0}
	level := dartLevel(darts)
	for _, d := range darts {
		apex := orb.Point{d.middle, d.apex}
		inner, outer := orb.Point{d.middle - d.width/2, level}, orb.Point{d.middle + d.width/2, level}
		arriving := construct.Square(construct.Direction(apex, inner))
		w.stretches = append(w.stretches, construct.Curve(from, leaving, 1./3, inner, arriving, 1./3))
		w.mouths = append(w.mouths, construct.DartMouth(inner, apex, outer, construct.Back(arriving)))
		w.darts = append(w.darts, pieces.Dart{Start: inner, Apex: apex, End: outer})
		from, leaving = outer, construct.Square(construct.Direction(apex, outer))
	}
	foot, up := side[0].Start(), side[0].Tangent(0)
	last := construct.Curve(from, leaving, 1./3, foot, construct.Back(construct.Square(up)), 1./3)
	w.stretches = append(w.stretches, last)
	return w
}

// dartLevel is how far the ends of the dart legs lie below the waist line, so
// that the seam sags evenly from the centre line to the first dart.
func dartLevel(darts []waistDart) float64 {
	if len(darts) == 0 {
		return 0
	}
	d := darts[0]
	return -(d.middle - d.width/2) * (d.width / 2 / d.apex) / 2
}

// firstShare is the first of two darts' share of what both take
// [source.OwnChoice].
const firstShare = 0.6

// dartWidths shares what the darts take among one dart, or two when one would
// be wider than 45 mm and is not taken up in a princess seam.
func (f figures) dartWidths(total float64) []float64 {
	switch {
	case total <= 0:
		return nil
	case total <= 45, f.princess:
		return []float64{total}
	}
	return []float64{float64(total * firstShare), float64(total * (1 - firstShare))}
}

// fitWaist draws the waist seam with its darts so wide that their seam, closed,
// is of a length: the seam's sag makes it a little longer than the level
// distance, which the darts take up.
func fitWaist(side pieces.Path, darts []waistDart, length float64) waistSeam {
	seam := drawWaist(side, darts)
	for range 12 {
		over := seam.length() - length
		if len(darts) == 0 || math.Abs(over) < 0.01 {
			break
		}
		for i := range darts {
			darts[i].width += over / float64(len(darts))
		}
		seam = drawWaist(side, darts)
	}
	return seam
}

// placeDarts puts the first dart at a distance from the centre line, the
// second halfway from there to the side; apex gives the height of each one's
// point. ok is false when a dart has less than 12 mm of seam beside it, or is
// too wide for its length to lie flat.
func placeDarts(widths []float64, first, side float64,
	apex func(i int, middle float64) float64) (darts []waistDart, ok bool) {
	clear := 0.0
	for i, width := range widths {
		middle := first
		if i == 1 {
			middle = (first+widths[0]/2+side)/2 + width/8
		}
		dart := waistDart{middle: middle, width: width, apex: apex(i, middle)}
		if middle-width/2 < clear+12 || dart.apex < 1.4*width {
			return nil, false
		}
		clear = middle + width/2
		darts = append(darts, dart)
	}
	return darts, clear <= side-12
}

// frontApex is the height of the point of a front waist dart: the first ends
// below the bust point, the second below a dart that comes from the side seam.
func (f figures) frontApex(i int, middle, width float64) float64 {
	first := min(f.bustLine-dartShort, f.underarm-5)
	if f.princess {
		return f.bustLine
	}
	if i == 0 {
		return first
	}
	foot := f.underarm - f.sideDartDrop(f.underarm)
	share := (middle - f.bustPoint) / (width - f.bustPoint)
	return min(0.75*first, f.bustLine+float64(share*(foot-f.bustLine))-15)
}

// backApex is the same for the back, where the first dart ends below the
// underarm.
func (f figures) backApex(i int) float64 {
	if i == 0 {
		return f.underarm - 20
	}
	return 0.85 * (f.underarm - 20)
}

// sideDartDrop is how far below the underarm the side dart begins: 7 cm, or
// less on a short side seam [source.CommonPractice].
func (f figures) sideDartDrop(side float64) float64 { return min(70, 0.45*side) }

// sideAboveWaist is the length of a side seam above the waist.
func (f figures) sideAboveWaist(side pieces.Path) float64 { return side[len(side)-1].Length() }

// record notes the steps that draw the side seam and the waist.
func (w waistSeam) record(s *construct.Sheet, waist, underarm construct.Point, side pieces.Path, f figures) {
	if w.below != nil {
		w.below.record(s, waist, underarm, side, f.WaistToHip, underarm.X()-side[len(side)-1].Start()[0])
		return
	}
	at := side.Start()
	foot := s.Right(waist, at[0], "the foot of the side seam: the width of the bust line less the taper")
	if at[1] > 0 {
		foot = s.Up(foot, at[1], "raised, to keep the waist square to the side seam")
	}
	s.Draw("draw the side seam "+construct.Numbers(underarm, foot), "")
	for _, d := range w.darts {
		s.Draw("mark a waist dart {} wide, its middle {} from the centre line, its ends {} below the waist, its "+
			"point {} above it", "what is left to take in",
			construct.Distance(d.Start, d.End), d.Apex[0], -d.Start[1], d.Apex[1])
	}
	s.Draw("draw the waist "+construct.Numbers(waist, foot), "square to the centre line, to the dart legs and to the "+
		"side seam")
}

// edges of the waist from the centre line to the side: "waist", or with darts
// "waist 1", "waist mouth 1", "waist 2" and so on.
func (w waistSeam) edges() ([]pieces.Edge, []pieces.Dart) {
	if w.below != nil {
		return w.below.edges()
	}
	if len(w.darts) == 0 {
		return []pieces.Edge{construct.Edge(seams.Waist, w.stretches[0])}, nil
	}
	var edges []pieces.Edge
	darts := make([]pieces.Dart, len(w.darts))
	for i, d := range w.darts {
		d.Name, d.Mouth = seams.Waist.Dart(i+1), seams.Waist.Mouth(i+1)
		darts[i] = d
		edges = append(edges,
			construct.Edge(seams.Waist.Stretch(i+1), w.stretches[i]),
			construct.Edge(d.Mouth, w.mouths[i]))
	}
	last := len(w.stretches)
	return append(edges, construct.Edge(seams.Waist.Stretch(last), w.stretches[last-1])), darts
}

// waists are the waist seams and side seams of both pieces.
type waists struct {
	front, back         waistSeam
	frontSide, backSide pieces.Path
	// waist and hip are the widths all round of a bodice that goes on below
	// the waist.
	waist, hip float64
}

func (f figures) noRoomForDarts() error {
	return construct.About(subject.WaistGirth, subject.BustGirth).Refuse(
		"bodice: the waist girth of %s leaves no room for its darts on a bust girth of %s: "+
			"measure both again, or let the waist hang straight",
		"Oberteil: der Taillenumfang von %s lässt bei einem Brustumfang von %s keinen Platz für "+
			"die Abnäher: messen Sie beide noch einmal, oder lassen Sie die Taille gerade hängen",
		construct.Length(f.Waist), construct.Length(f.Bust))
}
