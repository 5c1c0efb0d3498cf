package outline

// Defect is what points of an outline, or readings of a tape, cannot have; the sentence
// of each is in pieces/words.
type Defect string

// What Edges and Line find at a node.
const (
	TooFewPoints  Defect = "too few points"  // for an outline
	NoCorner      Defect = "no corner"       //
	TooFewOnLine  Defect = "too few on line" // for a line
	OnPointBefore Defect = "on point before" //
	ArcAndCurve   Defect = "arc and curve"   //
	ControlsAmiss Defect = "controls amiss"  // Number of them
)

// Fault is something wrong at a node.
type Fault struct {
	Of     Defect
	Node   int // from 0
	Number int
}

// Error is what is wrong; people read the sentence of pieces/words.
func (f *Fault) Error() string { return string(f.Of) }

// What Offsets.Nodes finds in a list of readings.
const (
	TooFewReadings  Defect = "too few readings" // of a side
	NoSteps         Defect = "no steps"         //
	StepsAndPlaces  Defect = "steps and places" //
	PlacesAmiss     Defect = "places amiss"     // Number of places, of Readings
	TooManySteps    Defect = "too many steps"   // of Every in Length
	AcrossNoSteps   Defect = "across no steps"  //
	AcrossAmiss     Defect = "across amiss"     // out to High there are Places, and so many Readings
	UpsideDown      Defect = "upside down"      // corners at Low and High
	SideAmiss       Defect = "side amiss"       // from Low to High there are Places, and so many Readings
	PlacesBackwards Defect = "places backwards" // Places
)

// ReadingFault is something wrong with the readings of a list.
type ReadingFault struct {
	Of   Defect
	List Readings
	// Low and High are where corners lie, Length and Every what does not go together, mm.
	Low, High, Length, Every float64
	// Places of the readings that there are, mm.
	Places []float64
	// Number of places that were said, and of Readings.
	Number, Readings int
}

// Readings names a list of readings.
type Readings int

// The lists.
const (
	OfLine Readings = iota
	OfRight
	OfLeft
	OfTop
	OfTopLeft
	OfBottom
	OfBottomLeft
)

// Error is what is wrong; people read the sentence of pieces/words.
func (f *ReadingFault) Error() string { return string(f.Of) }
