// Package found holds what an importer found in a drawing or a picture, before it is
// complete: outlines, lines, points and words, from which pieces are made once all
// that the file does not say has been said.
//
// An importer that knows what each line is fills a Drawing. One that has only loose
// lines fills a Sheet, whose lines are joined to outlines by Sheet.Drawing. Clean
// repairs an outline, or refuses it; Complete makes a piece of it and of what was said.
//
// Lengths are millimetres, y up.
package found

import (
	"io"

	"github.com/paulmach/orb"

	"ellwand/pieces"
)

// Drawing is what was found in one file, or in several that belong together.
type Drawing struct {
	// Title of the pattern; may be empty.
	Title string
	// Pieces in the order of the file: a piece is chosen by its number, from 1.
	Pieces []Piece
	Notes  []Note
	// Overview is the drawing as a whole; nil where there is nothing to choose.
	Overview *Overview
	// Photo writes the photo that was traced, with what was found drawn over it, as PNG;
	// nil for drawings.
	Photo func(io.Writer) error
}

// Piece is an outline with what lies in it. What the file does not say is left at its
// zero value.
type Piece struct {
	Name, Size string
	// Material is the cloth by the words of the file.
	Material string
	// Category is what the piece is by the words of the file: shell, lining.
	Category string
	// Outline is closed: every step ends where the next begins, the last where the
	// first begins. It may run either way.
	Outline []Step
	// Line says what the outline is.
	Line Line
	// Sew is the sew line inside an outline that is the cutting line; closed, or nil.
	Sew pieces.Path
	// AsDrawn and Mirrored are how many are cut as drawn, and how many mirrored; 0, 0
	// where the file does not say.
	AsDrawn, Mirrored int
	// Cut is how many are cut where the file says no more than that; 0 for others.
	Cut int
	// Mirror is the line on which the piece is mirrored: it lies on the fold, and the
	// outline is one half. Nil for none.
	Mirror *Straight
	// OpenSide is the straight side that an open sew line begins and ends on. Nil for none.
	OpenSide *Straight
	// SaysFold reports that its words say that it lies on the fold.
	SaysFold bool
	// Grain is the grainline, from its lower end to its upper. Nil for none.
	Grain *Straight
	// Lie of the grainline, where the file says it.
	Lie pieces.GrainLie
	// Notches lie on the outline, or on the sew line.
	Notches []Notch
	Inner   []Inner
	Texts   []Text
	// Accuracy is how far the true outline may lie from this one.
	Accuracy float64
	// Whole is the piece as the file says it in full, where it was written by this
	// program; all else only shows it then. Nil for others.
	Whole *pieces.Piece
}

// Step is one curve of an outline.
type Step struct {
	pieces.Curve
	// Begins says how the outline bends where the step begins.
	Begins Bend
}

// Bend is how an outline goes on at a point.
type Bend int

// The bends. A corner begins an edge of its own; at a point that is neither said to be
// a corner nor smooth the angle decides.
const (
	BendByAngle Bend = iota
	Corner
	Smooth
)

// Line is what an outline is.
type Line int

// The lines.
const (
	UnknownLine Line = iota
	CuttingLine
	SewLine
)

// Straight is a line between two points.
type Straight struct{ From, To orb.Point }

// Notch is a mark on the outline.
type Notch struct {
	At    orb.Point
	Shape NotchShape
	// Strokes of a notch that is counted by them, 1 or 2; 0 is 1.
	Strokes int
	// Match names notches that meet; may be empty.
	Match string
}

// NotchShape is how a notch is cut.
type NotchShape int

// The shapes. A plain one is a slit or a V, which files mostly do not tell apart.
const (
	PlainNotch NotchShape = iota
	TNotch
	CastleNotch
	CheckNotch
	UNotch
)

// Inner is a line or a point inside a piece.
type Inner struct {
	Kind InnerKind
	// Name of it; may be empty.
	Name string
	// Path of a line; nil of a point.
	Path pieces.Path
	At   orb.Point
}

// InnerKind is what lies inside a piece.
type InnerKind int

// The kinds.
const (
	InternalLine InnerKind = iota // to be drawn
	Cutout                        // to be cut, such as a buttonhole or a window
	StripeLine                    // lies on a stripe
	PlaidLine                     // lies on a check, across the stripes
	DrillHole
)

// Text is words in the drawing.
type Text struct {
	Words  string
	At     orb.Point
	Height float64
}

// LooseLines are a drawing of loose lines.
type LooseLines struct {
	Title   string
	Strokes []Stroke
	Points  []Spot
	Texts   []Text
	Notes   []Note
}

// Stroke is a line as it stands in a drawing.
type Stroke struct {
	Path pieces.Path
	// Group that it is drawn in, such as a layer or a titled group; may be empty.
	// Lines of different groups are not joined.
	Group string
	// Name of the line itself: an id, a title; may be empty.
	Name string
}

// Spot is a point that is drawn as one.
type Spot struct {
	At    orb.Point
	Group string
}
