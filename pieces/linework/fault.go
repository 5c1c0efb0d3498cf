package linework

// Defect is what a drawing in a file cannot have; the sentence of each is in pieces/words.
type Defect string

// What drawings of any kind cannot have.
const (
	// NoLines: nothing is drawn.
	NoLines Defect = "no lines"
	// TooFar: a line reaches farther than 1 km.
	TooFar Defect = "too far"
	// DotsOnly: it holds pictures of dots.
	DotsOnly Defect = "dots only"
)

// What cannot be asked of a drawing.
const (
	NoSuchLines Defect = "no such lines" // as those of the Number, of Known
	NoSuchLayer Defect = "no such layer" // as Text; Names there are
	NoSuchPage  Defect = "no such page"  // as Number, of Known
	// OverlapUnsure: lines on sheets that lie as Text says fit by several overlaps.
	OverlapUnsure Defect = "overlap unsure"
	// SheetsUnjoined: a Number of lines runs off the sheets, which were not joined.
	SheetsUnjoined Defect = "sheets unjoined"
)

// What a PDF file cannot have.
const (
	NotPDF       Defect = "not a PDF file"
	CutShort     Defect = "cut short"
	Damaged      Defect = "damaged"
	Locked       Defect = "locked"
	Packed       Defect = "packed"         // in a way that is not read
	NoPages      Defect = "no pages"       //
	TooManyPages Defect = "too many pages" // more than Number
	NoPaper      Defect = "no paper"       // its size is not said
	PaperNoSize  Defect = "paper no size"  //
	OnlyPictures Defect = "only pictures"  // of dots
)

// What a drawing in SVG cannot have.
const (
	NotSVG     Defect = "not SVG"    // it begins with the element Text
	NoDrawing  Defect = "no drawing" // nothing like SVG
	Entities   Defect = "entities"   // are defined
	Entity     Defect = "entity"     // is used
	Incomplete Defect = "incomplete" // Text is what the reader of XML says
	Encoded    Defect = "encoded"    // Text says how
	Unreadable Defect = "unreadable" // Text says why

	NumberMissing  Defect = "number missing"   // at the Text
	NumberTooLarge Defect = "number too large" // the Text
	BitMissing     Defect = "bit missing"      // 0 or 1, at the Text
	PointHalf      Defect = "half a point"     //
	NoLength       Defect = "no length"        // the Text
	NegativeSize   Defect = "negative size"    // of the attribute Text
	NoBox          Defect = "no box"           // the Text
	NoMove         Defect = "no move"          // a path begins with the Text
	NoCommand      Defect = "no command"       // the Text
	NoTransform    Defect = "no transform"     // the Text

	UsesAnother     Defect = "uses another file" // by the Text
	UsesNothing     Defect = "uses nothing"      // by the Text
	ShowsItself     Defect = "shows itself"      // by the Text
	ScaledToNothing Defect = "scaled to nothing" //
)

// What a DXF file cannot have.
const (
	Binary      Defect = "binary"         // in place of ASCII
	NoCode      Defect = "no code"        // where one of a group stands
	CutInGroup  Defect = "cut in a group" // after the line Number
	FarNumber   Defect = "far number"     // the Text
	NoArc       Defect = "no arc"         // of the radius Size
	NoEllipse   Defect = "no ellipse"     // of no width
	NoBlock     Defect = "no block"       // of the scale 0
	BlockAmiss  Defect = "block amiss"    // by its scale
	SplineAmiss Defect = "spline amiss"   // control points and knots
	NoWeight    Defect = "no weight"      // of a spline: Size
)

// What a drawing of our own, as somebody has left it, cannot have.
const (
	NotOwn          Defect = "not our own"       // the attribute Key, whose value is Text
	AllowanceAmiss  Defect = "allowance amiss"   // of the edge Text
	NotchAmiss      Defect = "notch amiss"       // its place on the edge Text
	StrokesAmiss    Defect = "strokes amiss"     // of a notch on the edge Text
	DartCornersFew  Defect = "few dart corners"  // of the dart Text
	MarkPlacedAmiss Defect = "mark placed amiss" // the mark Text
)

// Fault is something wrong with a drawing in a file.
type Fault struct {
	Of Defect
	// Page that it is on, or Line of the file, from 1; 0 where that is not said.
	Page, Line int
	// Piece that it is about, Element of the line and its Attribute; empty where it is
	// about more.
	Piece, Element, Attribute string
	// Number, Known, Size, Key and Text that the defect speaks of.
	Number, Known int
	Size          float64
	Key, Text     string
	// Names of the layers that there are.
	Names []string
}

// Error is what is wrong; people read the sentence of pieces/words.
func (f *Fault) Error() string { return string(f.Of) }
