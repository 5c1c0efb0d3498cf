package found

import "ellwand/pieces"

// Said is what a person says of a piece, beside what its file says; it goes before
// that. What was not said is left at its zero value.
type Said struct {
	Name, Size, Cloth string
	// Cut is how many are cut; 0 where that was not said.
	Cut       int
	Pair      Answer
	Fold      Side
	Grain     Lie
	Allowance Allowance
	// Kind is used where KindSaid.
	Kind     pieces.Kind
	KindSaid bool
}

// Answer is yes or no, where it was given.
type Answer int

// The answers.
const (
	NotSaid Answer = iota
	Yes
	No
)

// Side of a piece as it is drawn, whose straight edge lies on the fold.
type Side int

// The sides. As it is found, the fold is the mirror line of the file, if it has one;
// a piece on no fold is opened at that line.
const (
	FoldAsFound Side = iota
	NoFold
	LeftSide
	RightSide
	TopSide
	BottomSide
)

// sides in words.
var sides = [...]string{FoldAsFound: "as found", NoFold: "none", LeftSide: "left", RightSide: "right", TopSide: "top",
	BottomSide: "bottom"}

// Words for the sides, in the order of the constants: as files name them. The first is
// the usual one.
func (Side) Words() []string { return sides[:] }

// String names the side in a word.
func (s Side) String() string { return sides[s] }

// Lie is how the grainline lies on a piece as it is drawn.
type Lie int

// The lies: as the file draws it; up, to the top of the drawing; across it; up, with
// the piece on the bias; or up, lying along or across the cloth as takes less.
const (
	GrainAsFound Lie = iota
	GrainUp
	GrainAcross
	GrainBias
	GrainEither
)

// lies in words.
var lies = [...]string{GrainAsFound: "as found", GrainUp: "up", GrainAcross: "across", GrainBias: "bias",
	GrainEither: "either"}

// Words for the lies, in the order of the constants: as files name them. The first is the
// usual one.
func (Lie) Words() []string { return lies[:] }

// Allowance is what an outline has of its allowance.
type Allowance struct {
	How How
	// Width, mm, of one that is added or included.
	Width float64
}

// How an outline has its allowance.
type How int

// The ways.
const (
	AllowanceAsFound How = iota
	AllowanceAdded
	AllowanceIncluded
	AllowanceUnknown
)

// Question is something that neither the file nor a person has said.
type Question int

// The questions.
const (
	AskName Question = iota
	AskCut
	AskGrain
	AskAllowance
	// These have a usual answer: a pair where a piece is not its own mirror image, no fold unless
	// its words say so, the garment's cloth, no size.
	AskPair
	AskFold
	AskCloth
	AskSize
)

// Optional is what may be said of a piece and was not: it has a usual answer.
func (p Piece) Optional(s Said) []Question {
	var out []Question
	if !p.SaysHands() && s.Pair == NotSaid {
		out = append(out, AskPair)
	}
	if p.Mirror == nil && s.Fold == FoldAsFound && !p.SaysFold {
		out = append(out, AskFold)
	}
	if p.Material == "" && s.Cloth == "" {
		out = append(out, AskCloth)
	}
	if p.Size == "" && s.Size == "" {
		out = append(out, AskSize)
	}
	return out
}

// Extent is the size of the outline as it is drawn, mm.
func (p Piece) Extent() (across, up float64) {
	if len(p.Outline) == 0 {
		return 0, 0
	}
	box := ring(pathOf(p.Outline)).Bound()
	return box.Max[0] - box.Min[0], box.Max[1] - box.Min[1]
}

// Count is how many are cut by the file; 0 where it does not say.
func (p Piece) Count() int {
	if p.Whole != nil {
		return p.Whole.Cut
	}
	return p.Cut + p.AsDrawn + p.Mirrored
}

// SaysHands reports that the file says how many are right ones and how many left ones.
func (p Piece) SaysHands() bool { return p.Whole != nil || p.AsDrawn+p.Mirrored > 0 }

// Missing is what must still be said of a piece.
func (p Piece) Missing(s Said) []Question {
	if p.Whole != nil {
		return nil
	}
	var out []Question
	if p.Name == "" && s.Name == "" {
		out = append(out, AskName)
	}
	if p.Count() == 0 && s.Cut == 0 {
		out = append(out, AskCut)
	}
	if p.Grain == nil && p.Mirror == nil && s.Grain == GrainAsFound {
		out = append(out, AskGrain)
	}
	if p.SaysFold && p.Mirror == nil && s.Fold == FoldAsFound {
		out = append(out, AskFold)
	}
	if p.Sew == nil && p.Line != CuttingLine && s.Allowance.How == AllowanceAsFound {
		out = append(out, AskAllowance)
	}
	return out
}

// IsPair reports that as many are right ones as left ones, by the file.
func (p Piece) IsPair() bool {
	if p.Whole != nil {
		return p.Whole.Pair
	}
	return p.Mirrored > 0 && p.Mirrored == p.AsDrawn
}
