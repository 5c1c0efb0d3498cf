package cloth

import (
	"math"

	"github.com/paulmach/orb"

	"ellwand/fabric/internal/motion"
	"ellwand/nest/portable"
	"ellwand/pieces/geometry"
)

// Flaw is a place on the cloth that may not be used: a hole, a stain, a faded
// edge, a shaded band.
type Flaw struct {
	Name string // "stain", for messages and the plan
	// Outline as measured on the cloth lying open, right side up: x along
	// the warp from the cut end, y across from the outer edge of the selvedge
	// nearest to the cutter. A simple ring.
	Outline orb.Ring
	// OffCloth says that there is no cloth here at all, as beside a remnant that
	// is not a rectangle: nothing that can be found and chalked round.
	OffCloth bool
}

// RoundFlaw is a flaw within a circle: its outline is the polygon of 32 sides
// about the circle.
func RoundFlaw(name string, centre orb.Point, radius float64) Flaw {
	const sides = 32 // [source.OwnChoice]
	out := radius / portable.Cos(math.Pi/sides)
	var ring orb.Ring
	for i := range sides {
		sin, cos := portable.Sincos(2 * math.Pi * float64(i) / sides)
		ring = append(ring, orb.Point{centre[0] + float64(out*cos), centre[1] + float64(out*sin)})
	}
	return Flaw{Name: name, Outline: geometry.Closed(ring)}
}

// BandFlaw is a flaw that runs the whole length of the cloth, such as a faded
// edge, from one distance across to the other.
func BandFlaw(name string, from, to float64) Flaw {
	return Flaw{Name: name, Outline: geometry.Rectangle(-Endless, from, Endless, to)}
}

// BarFlaw is a flaw that runs across the whole cloth, such as a shaded band,
// from one distance along the warp to the other.
func BarFlaw(name string, from, to float64) Flaw {
	return Flaw{Name: name, Outline: geometry.Rectangle(from, -Endless, to, Endless)}
}

// Endless, mm: longer than any cloth. What is measured from it is cut off at
// the lay [source.OwnChoice].
const Endless = 1e7

// String names the flaw in messages.
func (f Flaw) String() string {
	if f.Name == "" {
		return "a flaw"
	}
	return "the flaw " + f.Name
}

// What a flaw cannot have.
const (
	FlawWithoutNumber Defect = "flaw without a number"
	FlawOfNothing     Defect = "flaw that encloses nothing"
	FlawCrossed       Defect = "flaw that crosses itself"
)

// Check refuses, with a Fault, an outline that encloses nothing or crosses itself.
func (f Flaw) Check() error {
	if faults := f.faults(); len(faults) > 0 {
		return faults[0]
	}
	return nil
}

func (f Flaw) faults() []Fault {
	for _, p := range f.Outline {
		if math.IsNaN(p[0]+p[1]) || math.IsInf(p[0]+p[1], 0) {
			return []Fault{{Of: FlawWithoutNumber, Flaw: f.Name}}
		}
	}
	if len(geometry.Distinct(f.Outline)) < 3 || geometry.Area(geometry.Closed(f.Outline)) == 0 {
		return []Fault{{Of: FlawOfNothing, Flaw: f.Name}}
	}
	if err := motion.Polygon(f.Outline).Validate(); err != nil {
		return []Fault{{Of: FlawCrossed, Flaw: f.Name}}
	}
	return nil
}
