package fabric

import (
	"github.com/paulmach/orb"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
)

// LayPlan is one lay of a cloth with every piece in its place, or the reason
// why that lay is not possible.
type LayPlan struct {
	Cloth cloth.Cloth
	// Asked are the pieces as the maker gave them.
	Asked []pieces.Piece
	Lay   Lay
	Plies int
	// Width is the usable width of the lay: y runs from 0 to Width.
	Width float64
	// Length of the lay as it lies on the table: x runs from 0 to Length.
	Length float64
	// Parts are the rectangles of the lay with their plies; one, in most lays.
	Parts []Part
	// FoldedIn is how far the edge of the cloth lies from the fold, in the lay
	// with one selvedge folded in; otherwise 0.
	FoldedIn float64
	// Taken is the length of cloth that the lay takes: Length, or twice as
	// much where the cloth is folded or cut across.
	Taken float64
	// Need is Taken with the straightening of the ends, what is lost when the
	// cloth is wetted and the maker's safety; Buy is Need rounded up to the
	// step of the shop, and to the least that it cuts.
	Need, Buy float64
	// Bound is a length that no layout of these pieces in this lay can beat.
	Bound float64
	// Cuts counts the outlines to chalk and cut round, and the cuts across
	// the cloth that the lay itself takes.
	Cuts int
	// Zones of the lay that may not be used: flaws, in whichever ply, and
	// where two selvedges meet.
	Zones []orb.Ring
	// Offcuts that lie in a row on the cloth when there is not one cloth but
	// several remnants of it; otherwise none.
	Offcuts []OffcutPlace
	// Density is the marker efficiency, 0 to 1: the area of all pieces cut
	// over the area of usable cloth taken, in all plies.
	Density float64
	// Matches are what the lay keeps on the repeat of the cloth.
	Matches []Match
	// Impossible says why the lay cannot be used, and what would help. Empty
	// when it can.
	Impossible string
	// Throughout is the plan that a lay of two parts comes down to when it
	// gains nothing: one part, folded or open, takes the whole cloth.
	// Impossible then says so. Nil otherwise.
	Throughout *LayPlan
	// Notes are cautions for the maker about this plan. May be empty.
	Notes  []string
	Pieces []Laid

	places places
}

// Possible reports whether the lay can be used.
func (p LayPlan) Possible() bool { return p.Impossible == "" }

// Shown is the plan to lay by: Throughout where the lay comes down to it,
// otherwise the plan itself.
func (p LayPlan) Shown() LayPlan {
	if p.Throughout != nil {
		return *p.Throughout
	}
	return p
}

// Part is a rectangle of a lay in which the cloth lies in the same plies, in
// the frame of the lay.
type Part struct {
	X, Y, Length, Width float64
	Plies               int
	// FoldLow and FoldHigh say that its lower or its upper edge is a fold.
	FoldLow, FoldHigh bool
	// OnCloth says where its plies lie on the open cloth, the lowest first.
	OnCloth []Ply
}

// Ply of a part, or the half of one that a fold of its own brings there.
type Ply struct {
	// Upper says that it lies on another, right side down.
	Upper bool
	// Low and High bound it across the lay, mm: the part has it at y between
	// them.
	Low, High float64
	// ToCloth brings a place of the lay to the open cloth, right side up: x
	// along the warp from the cut end, y across from the outer edge of the
	// selvedge nearest to the cutter.
	ToCloth pieces.Motion
}

// Turning is a way in which a template may lie.
type Turning struct {
	// Degrees and Mirrored as Laid.Turn and Laid.Mirrored.
	Degrees  float64
	Mirrored bool
}

// Laid is one template in its place. Coordinates are in the cloth frame.
type Laid struct {
	// Piece as it is chalked here, in its own frame: in an open lay a
	// cut-on-fold piece is the whole piece.
	Piece pieces.Piece
	Name  string
	// Garment and Size as in the piece.
	Garment, Size string
	// Copy counts the templates of this piece in this lay from 1.
	Copy int
	// Yields is how many pieces this template gives: 2 for a pair cut from
	// two plies, otherwise 1.
	Yields int
	// Mirrored says that the template lies face down. It is mirrored in x
	// first, then turned counter-clockwise by Turn degrees (0 up to 360),
	// both about the origin of the piece, then moved by X and Y.
	Mirrored bool
	Turn     float64
	X, Y     float64
	// Turnings are all the ways in which this template may lie here by its
	// grain, the nap and the fold; the tilt of the cloth is allowed besides.
	Turnings []Turning
	// OnFold says that the fold edge lies on a fold of its part.
	OnFold bool
	// Part is where it lies: an index into LayPlan.Parts.
	Part int
	// Outline is the cutting line: closed, no more than 0.1 mm outside the
	// true curve.
	Outline orb.Ring
	// Seam is the seam line, closed.
	Seam orb.Ring
	// Grain is the grainline; Grain[1] is "this end up".
	Grain   [2]orb.Point
	Notches []LaidNotch
	Darts   []LaidDart
	Marks   []LaidMark
}

// LaidNotch is a notch in its place.
type LaidNotch struct {
	// At is on the seam line, Out where the notch meets the cutting line.
	At, Out orb.Point
	// Along is the unit direction of the seam line at the notch.
	Along orb.Point
	// Count of strokes, 1 or 2.
	Count int
}

// LaidDart is a dart in its place: its sewing lines, closed when the dart
// lies wholly inside the piece.
type LaidDart struct {
	Name string
	Line orb.LineString
}

// LaidMark is an inner mark in its place: a line, or a single point.
type LaidMark struct {
	Name string
	Line orb.LineString
}
