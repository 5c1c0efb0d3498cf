package pieces

import (
	"github.com/paulmach/orb"

	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Defect is what a piece cannot have; the sentence of each is in pieces/words.
type Defect string

// What Piece.Check, CuttingOutline and Trimmed find, each with what it says of a Fault.
const (
	NoName              Defect = "no name"               //
	NoEdges             Defect = "no edges"              //
	NoLine              Defect = "no line"               // Edge
	Broken              Defect = "broken"                // Edge before its part Number, by Length
	NotChained          Defect = "not chained"           // Edge begins by Length away from the end of Other
	EdgeUnnamed         Defect = "edge unnamed"          // Number from 1
	EdgeNamedTwice      Defect = "edge named twice"      // Edge
	Crossed             Defect = "crossed"               // At, between Edge and Other
	Clockwise           Defect = "clockwise"             //
	NoArea              Defect = "no area"               //
	NoGrain             Defect = "no grain"              //
	UnknownGrain        Defect = "unknown grain"         //
	AllowanceNoNumber   Defect = "allowance no number"   // Edge
	AllowanceNegative   Defect = "allowance negative"    // Edge, Length
	IncludedNoWidth     Defect = "included no width"     // Edge
	AccuracyNoLength    Defect = "accuracy no length"    //
	CutNone             Defect = "cut none"              // Number
	PairUneven          Defect = "pair uneven"           // Number
	FoldNoEdge          Defect = "fold no edge"          // Edge
	FoldBent            Defect = "fold bent"             // Edge
	FoldAllowance       Defect = "fold allowance"        // Edge
	AcrossFold          Defect = "across fold"           // Edge, Length
	NotchNoEdge         Defect = "notch no edge"         // Edge
	NotchOffEdge        Defect = "notch off edge"        // Edge, at Length of Whole
	NotchNoStrokes      Defect = "notch no strokes"      // Edge, at Length, Number of them
	MarkNowhere         Defect = "mark nowhere"          // Mark
	DartFlat            Defect = "dart flat"             // Dart
	DartOutside         Defect = "dart outside"          // Dart, At
	DartNoMouth         Defect = "dart no mouth"         // Dart, Edge
	DartLegsApart       Defect = "dart legs apart"       // Dart, from the ends of Edge
	DartApexOnEdge      Defect = "dart apex on edge"     // Dart
	NothingToCut        Defect = "nothing to cut"        //
	AllowanceAcrossFold Defect = "allowance across fold" //
	NothingInside       Defect = "nothing inside"        // what Edge includes
)

// Fault is something that is wrong with a piece.
type Fault struct {
	Of Defect
	// Piece is its name; empty where it has none.
	Piece string
	// Edge that it is about, and the Other.
	Edge, Other seams.Name
	Dart        seams.Name
	Mark        marks.Name
	At          orb.Point
	// Length that is wrong, and the Whole that it is of, mm.
	Length, Whole float64
	Number        int
}

// Error names the piece and what is wrong; people read the sentence of pieces/words.
func (f Fault) Error() string {
	if f.Piece == "" {
		return string(f.Of)
	}
	return f.Piece + ": " + string(f.Of)
}

// fault of the piece.
func (p Piece) fault(f Fault) error {
	f.Piece = p.Name
	return f
}

func (p Piece) allowanceFault(e Edge) error {
	if !finite(e.Allowance) {
		return p.fault(Fault{Of: AllowanceNoNumber, Edge: e.Name})
	}
	return p.fault(Fault{Of: AllowanceNegative, Edge: e.Name, Length: e.Allowance})
}
