package outline

import (
	"math"
	"slices"

	"github.com/paulmach/orb"

	"ellwand/pieces/seams"
)

// Offsets are readings of a tape: along a straight line on the piece, the fold or
// the grainline, and square to it out to the edge.
//
// The line runs up from (0, 0). Readings are taken where it begins, every so far,
// and at the corners of the edge; those of a side are how far the edge lies from
// the line, those at the top and the bottom how far it lies above the line's end
// (below it, when negative), beginning at the line.
type Offsets struct {
	// Length of the line; 0 where it follows from the readings of the right side.
	Length float64
	// Every is how far apart readings are; 0 where At has the places of those of
	// the sides, from the line's beginning up.
	Every float64
	At    []float64
	// Right side, and the left: none where the line is the left edge itself.
	Right, Left []float64
	// Top and Bottom of the right side and of the left; none where that edge runs
	// straight from the line's end, square to it.
	Top, TopLeft, Bottom, BottomLeft []float64
	// OnFold says that the line is the fold: top and bottom leave it square.
	OnFold bool
}

// near, mm, is how near to a corner no reading of its own is taken, and nearShare of
// a step how near one may be left out [source.OwnChoice].
const (
	near      = 1.0
	nearShare = 0.4
)

// MostSteps in any length [source.OwnChoice].
const MostSteps = 2000

// side is one side of the line: its readings with the places they were taken at.
type side struct{ across, top, bottom []orb.Point }

// Nodes of the outline, counter-clockwise, its edges named as those of a rectangle:
// bottom, right, top and left. The errors are of type *ReadingFault.
func (o Offsets) Nodes() ([]Node, error) {
	if err := o.complete(); err != nil {
		return nil, err
	}
	right, err := o.side(o.Right, o.Top, o.Bottom, [3]Readings{OfRight, OfTop, OfBottom})
	if err != nil {
		return nil, err
	}
	var left side
	if len(o.Left) > 0 {
		if left, err = o.side(o.Left, o.TopLeft, o.BottomLeft,
			[3]Readings{OfLeft, OfTopLeft, OfBottomLeft}); err != nil {
			return nil, err
		}
	} else {
		left = o.straight(right)
	}
	return o.nodes(left, right), nil
}

// complete finds the length of the line.
func (o *Offsets) complete() error {
	last := len(o.Right) - 1
	switch {
	case last < 1:
		return &ReadingFault{Of: TooFewReadings, List: OfRight}
	case o.Every <= 0 && len(o.At) == 0:
		return &ReadingFault{Of: NoSteps}
	case o.Every > 0 && len(o.At) > 0:
		return &ReadingFault{Of: StepsAndPlaces}
	case len(o.At) > 0 && len(o.At) != len(o.Right):
		return &ReadingFault{Of: PlacesAmiss, List: OfRight, Number: len(o.At), Readings: len(o.Right)}
	}
	if o.Length > 0 {
		return nil
	}
	o.Length = o.Every * float64(last)
	if len(o.At) > 0 {
		o.Length = o.At[last]
	}
	return nil
}

// side gives the readings of a side their places.
func (o Offsets) side(across, top, bottom []float64, names [3]Readings) (side, error) {
	var out side
	reach := [2]float64{across[len(across)-1], across[0]} // of the upper corner and of the lower
	for _, list := range [][]float64{{o.Length}, across, top, bottom} {
		for _, reading := range list {
			if o.Every > 0 && math.Abs(reading) > MostSteps*o.Every {
				return out, &ReadingFault{Of: TooManySteps, Length: math.Abs(reading), Every: o.Every}
			}
		}
	}
	for k, list := range [2][]float64{top, bottom} {
		level := [2]float64{o.Length, 0}[k]
		places := o.places(0, reach[k], len(list))
		if len(list) == 0 {
			list, places = []float64{0, 0}, []float64{0, reach[k]}
		}
		if o.Every == 0 && len(list) > 2 {
			return out, &ReadingFault{Of: AcrossNoSteps, List: names[1+k]}
		}
		if len(list) != len(places) {
			return out, &ReadingFault{Of: AcrossAmiss, List: names[1+k], High: reach[k], Places: places,
				Readings: len(list)}
		}
		var points []orb.Point
		for i, x := range places {
			points = append(points, orb.Point{x, level + list[i]})
		}
		if k == 0 {
			out.top = points
		} else {
			out.bottom = points
		}
	}
	low, high := out.bottom[len(out.bottom)-1][1], out.top[len(out.top)-1][1]
	if high-low < near {
		return out, &ReadingFault{Of: UpsideDown, List: names[0], Low: low, High: high}
	}
	places := o.places(low, high, len(across))
	if len(o.At) > 0 {
		places = slices.Clone(o.At)
		places[0], places[len(places)-1] = low, high
	}
	if len(across) != len(places) {
		return out, &ReadingFault{Of: SideAmiss, List: names[0], Low: low, High: high, Places: places,
			Readings: len(across)}
	}
	for i, y := range places {
		if i > 0 && y <= places[i-1] {
			return out, &ReadingFault{Of: PlacesBackwards, List: names[0], Places: places}
		}
		out.across = append(out.across, orb.Point{across[i], y})
	}
	return out, nil
}

// places of so many readings between two corners: the first corner, whole steps from
// the beginning of the line, and the last corner. A step that lies near a corner has
// a reading only where there are as many.
func (o Offsets) places(low, high float64, wanted int) []float64 {
	out := []float64{low}
	if o.Every > 0 {
		for k := math.Ceil(low / o.Every); ; k++ {
			at := k * o.Every
			if at >= high-near {
				break
			}
			if at > low+near {
				out = append(out, at)
			}
		}
	}
	all := append(out, high)
	out = slices.Clone(all)
	for len(out) > max(wanted, 2) {
		first, last := out[1]-low, high-out[len(out)-2]
		switch {
		case min(first, last) > nearShare*o.Every:
			return all
		case first < last:
			out = slices.Delete(out, 1, 2)
		default:
			out = slices.Delete(out, len(out)-2, len(out)-1)
		}
	}
	return out
}

// straight is the left edge on the line itself.
func (o Offsets) straight(right side) side {
	low, high := orb.Point{0, right.bottom[0][1]}, orb.Point{0, right.top[0][1]}
	return side{across: []orb.Point{low, high}, top: []orb.Point{high}, bottom: []orb.Point{low}}
}

// nodes run along the bottom from left to right, up the right side, back along the
// top and down the left.
func (o Offsets) nodes(left, right side) []Node {
	image := func(points []orb.Point) []orb.Point {
		out := slices.Clone(points)
		for i := range out {
			out[i][0] = 0 - out[i][0]
		}
		slices.Reverse(out)
		return out
	}
	back := func(points []orb.Point) []orb.Point {
		out := slices.Clone(points)
		slices.Reverse(out)
		return out
	}
	bottom := join(image(left.bottom), right.bottom)
	top := join(back(right.top), back(image(left.top)))
	var out []Node
	if o.OnFold {
		out = append(out, offFold(seams.Bottom, bottom)...)
		out = append(out, run(seams.Right, right.across)...)
		out = append(out, toFold(seams.Top, top)...)
		return append(out, run(seams.Left, image(left.across))...)
	}
	out = append(out, run(seams.Bottom, bottom)...)
	out = append(out, run(seams.Right, right.across)...)
	out = append(out, run(seams.Top, top)...)
	return append(out, run(seams.Left, image(left.across))...)
}

// join leaves out the point that two lines share.
func join(a, b []orb.Point) []orb.Point {
	if len(a) > 0 && len(b) > 0 && math.Abs(a[len(a)-1][0]-b[0][0]) < joined {
		a = a[:len(a)-1]
	}
	return append(a, b...)
}
