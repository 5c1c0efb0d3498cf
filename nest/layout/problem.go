// Package layout states what is to be laid and what a layout is, as plain data,
// and what can be said of both without a search: whether a problem makes sense,
// where a placement puts an outline, how far outlines reach, how deep and with
// what area they overlap.
//
// The frame: x runs along the strip from 0, y across it from 0 to
// Problem.Width. Lengths are in any one unit (Ellwand uses millimetres);
// angles are in degrees, counter-clockwise.
package layout

import "github.com/paulmach/orb"

// Problem states what is to be laid and where.
//
// With Length zero the question is the shortest strip; otherwise it is
// whether everything fits on the rectangle Length x Width, or on Sheets when
// those are given.
type Problem struct {
	// Width of the strip, across (y). Positive.
	Width float64
	// Length of the sheet (x), or 0 for a strip of open length.
	Length float64
	// Sheets are the outlines, with holes, that may be used in place of the
	// rectangle, each in its own frame. Empty: the rectangle. When they are
	// given, Width and Length are ignored.
	Sheets []orb.Polygon
	// Zones may not be used: pieces may touch but not overlap them. They
	// belong to the strip or to the first sheet.
	Zones []orb.Ring
	// Gap is the least distance between two pieces. Not negative.
	Gap float64
	// ClearLow and ClearHigh are how far what is not pinned keeps from y = 0 and from
	// y = Width (with sheets: from the top of the sheet), where those are folds: the
	// images beyond keep as far, so half of the gap keeps the gap. Not negative.
	ClearLow, ClearHigh float64
	// Items are the outlines to lay, with their copies.
	Items []Item
}

// Item is an outline of which a number of copies is laid.
type Item struct {
	// Name is used in messages only.
	Name string
	// Outline is a simple ring of positive area, closed or not, in either
	// sense of rotation.
	Outline orb.Ring
	// Core is a ring inside the outline that the true shape surely covers, where
	// the outline is drawn about it: proofs that something cannot be rest on it.
	// Empty: the outline itself.
	Core orb.Ring
	// Copies to lay, 1 or more.
	Copies int
	// Turns that are allowed, at least one.
	Turns []Turn
	// Tilt in degrees that a copy may deviate from a turn, either way.
	Tilt float64
	// Group of copies that must all use turns of the same Direction; 0 binds
	// to no group.
	Group int
	// PeriodX and PeriodY bind the reference point (Placement.X, Placement.Y)
	// to a lattice: X = Turn.OffsetX modulo PeriodX, and likewise in y.
	// 0 leaves the coordinate free.
	PeriodX, PeriodY float64
}

// Turn is one way in which an item may lie: mirrored first in x (x becomes
// -x), if asked, then turned counter-clockwise about the origin of its
// outline.
type Turn struct {
	Degrees  float64
	Mirrored bool
	// Pin binds the outline to an edge of the strip.
	Pin Pin
	// Direction of the turn for Item.Group, for example 0 and 1 for the two
	// ways along the strip.
	Direction int
	// OffsetX and OffsetY are the place on the lattice of Item.PeriodX and
	// PeriodY.
	OffsetX, OffsetY float64
}

// Pin says which edge of the strip an outline must touch.
type Pin int

const (
	// PinNone leaves the outline free.
	PinNone Pin = iota
	// PinLow puts the lowest point of the turned outline on y = 0.
	PinLow
	// PinHigh puts the highest point of the turned outline on y = Width.
	PinHigh
)

// Placement is where one copy of an item lies.
type Placement struct {
	Item int // index into Problem.Items
	Copy int // 0 to Copies-1
	Turn int // index into Item.Turns
	// Tilt in degrees, added to the turn; within Item.Tilt.
	Tilt float64
	// Sheet is an index into Problem.Sheets; 0 for the strip.
	Sheet int
	// X and Y move the turned outline.
	X, Y float64
}

// Layout is a set of placements on a strip.
type Layout struct {
	// Length used: the largest x of any placed outline, or, on sheets, 0.
	Length     float64
	Placements []Placement
}
