package proof

import (
	"slices"

	"github.com/paulmach/orb"
)

// Piece is an outline of which copies are laid.
type Piece struct {
	Copies int
	// Outlines are the turned outlines, one an allowed turn: at least one.
	Outlines []orb.Ring
	// Pins say for each outline which edge of the strip it must touch; nil
	// for none.
	Pins []Pin
	// Tilts says that the outlines may also be tilted: then only Area and
	// Least are known of them.
	Tilts bool
	Area  float64
	// Least is the least extent along x, over all turns and tilts.
	Least float64
	// Ways are the outlines in all turns that are allowed, those turned end for end
	// apart; nil where they are not known.
	Ways []orb.Ring
	// Turns are all that are allowed, mirror images among them; nil when there
	// is no lattice.
	Turns []Turned
}

// Pin is the edge of the strip that an outline must touch.
type Pin int

const (
	// Free outlines need touch nothing.
	Free Pin = iota
	// Low outlines touch y = 0.
	Low
	// High outlines touch y = width.
	High
)

// Strip is what the pieces are laid on: zones may not be used. Only zones
// that lie within the strip, and do not meet one another's bounding boxes,
// are made use of.
type Strip struct {
	Width, Gap float64
	// Reach is how far a piece may reach into another, or lie off its lattice.
	Reach float64
	Zones []orb.Ring
	// Known are sections that were cut before, of outlines in the same memory; may be
	// nil.
	Known *Sections
}

// Sections remembers how outlines are cut, for strips of one gap and any width.
type Sections struct {
	gap float64
	of  map[*orb.Point][]slab
}

// NewSections for strips of a gap.
func NewSections(gap float64) *Sections { return &Sections{gap: gap, of: map[*orb.Point][]slab{}} }

// sections of an outline, which is not empty.
func (s Strip) sections(outline orb.Ring) []slab {
	if s.Known == nil || s.Known.gap != s.Gap {
		return sections(outline, s.Gap)
	}
	first := &outline[0]
	if _, known := s.Known.of[first]; !known {
		s.Known.of[first] = sections(outline, s.Gap)
	}
	return s.Known.of[first]
}

// Turned is a piece in one of its turns, in the frame of its reference point.
type Turned struct {
	Outline orb.Ring
	Pin     Pin
	// Period of the lattice that the reference point keeps to along the strip
	// and across it, from Offset on; 0 for none.
	Period, Offset [2]float64
}

func (p Piece) isOnLattice() bool {
	return !p.Tilts && slices.ContainsFunc(p.Turns, func(t Turned) bool { return t.Period[0] > 0 })
}
