package found

import (
	"math"
	"slices"
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/seams"
)

// cornerAngle, degrees, from which a bend of which nothing is said is a corner, where
// an edge begins [source.OwnChoice].
const cornerAngle = 20

const (
	// onMirror, mm, is how far what lies on the mirror line may lie off it, and along
	// the cosine of the angle by which it may turn from it [source.OwnChoice].
	onMirror = 0.05
	along    = 0.9 // [source.OwnChoice]
)

// begins says that an edge begins at a step.
func begins(outline []Step, i int) bool {
	switch outline[i].Begins {
	case Corner:
		return true
	case Smooth:
		return false
	}
	before := outline[(i+len(outline)-1)%len(outline)]
	u, v := before.Tangent(1), outline[i].Tangent(0)
	return math.Abs(math.Atan2(geometry.Cross(u, v), geometry.Dot(u, v))) > cornerAngle*math.Pi/180
}

// edgesOf an outline, numbered from 1.
func edgesOf(outline []Step) []pieces.Edge {
	first := slices.IndexFunc(outline, func(s Step) bool { return s.Begins == Corner })
	for i := 0; first < 0 && i < len(outline); i++ {
		if begins(outline, i) {
			first = i
		}
	}
	first = max(first, 0)
	round := slices.Concat(outline[first:], outline[:first])
	var out []pieces.Edge
	for i, s := range round {
		if i == 0 || begins(round, i) {
			out = append(out, pieces.Edge{Name: numbered(len(out))})
		}
		last := &out[len(out)-1]
		last.Path = append(last.Path, s.Curve)
	}
	return out
}

// numbered name of the edge at a place of the outline.
func numbered(i int) seams.Name { return seams.Called("edge " + strconv.Itoa(i+1)) }

// foldOnMirror makes one edge of the steps on the mirror line, and says where it
// begins; false where no step lies there.
func foldOnMirror(outline []Step, mirror Straight) (out []Step, at int, ok bool) {
	on := func(p orb.Point) bool { return geometry.LineDistance(p, mirror.From, mirror.To) <= onMirror }
	u := geometry.Unit(geometry.Sub(mirror.To, mirror.From))
	lies := func(s Step) bool {
		runs := math.Abs(geometry.Dot(u, geometry.Unit(geometry.Sub(s.End(), s.Start()))))
		return on(s.Start()) && on(s.At(0.5)) && on(s.End()) && runs > along
	}
	n := len(outline)
	first := -1
	for i := range outline {
		if lies(outline[i]) && !lies(outline[(i+n-1)%n]) {
			if first >= 0 { // two stretches on one line are no fold
				return outline, 0, false
			}
			first = i
		}
	}
	if first < 0 {
		return outline, 0, false
	}
	round := slices.Concat(outline[first:], outline[:first])
	last := 0
	for last+1 < n && lies(round[last+1]) {
		last++
	}
	fold := Step{Curve: pieces.Line{From: round[0].Start(), To: round[last].End()}, Begins: Corner}
	rest := slices.Clone(round[last+1:])
	if len(rest) == 0 {
		return outline, 0, false
	}
	rest[0].Begins = Corner
	return keepStart(append([]Step{fold}, rest...), outline[0].Start())
}

// keepStart has an outline, whose fold is its first step, begin at a point of it.
func keepStart(steps []Step, start orb.Point) (out []Step, at int, ok bool) {
	k := max(0, slices.IndexFunc(steps, func(s Step) bool { return s.Start() == start }))
	return slices.Concat(steps[k:], steps[:k]), (len(steps) - k) % len(steps), true
}

// foldOnSide is the step of the longest straight edge nearest to a side of the piece;
// false where there is none.
func foldOnSide(outline []Step, side Side) (at int, ok bool) {
	box := ring(pathOf(outline)).Bound()
	best := 0.0
	for i, s := range outline {
		line, straight := s.Curve.(pieces.Line)
		if !straight {
			continue
		}
		if onSide(line, box, side) && line.Length() > best {
			at, ok, best = i, true, line.Length()
		}
	}
	return at, ok
}

// onSide says that a line lies on a side of what it bounds.
func onSide(line pieces.Line, box orb.Bound, side Side) bool {
	const most = 2.0 // mm off the side [source.OwnChoice]
	off := 0.0
	switch side {
	case LeftSide:
		off = max(line.From[0], line.To[0]) - box.Min[0]
	case RightSide:
		off = box.Max[0] - min(line.From[0], line.To[0])
	case TopSide:
		off = box.Max[1] - min(line.From[1], line.To[1])
	case BottomSide:
		off = max(line.From[1], line.To[1]) - box.Min[1]
	}
	return off <= most
}
