package lay

// NoteKind is what a note is about.
type NoteKind int

// The notes that a plan may have; their words are in fabric/words.
const (
	// Said is a sentence of whoever asked for the plan.
	Said NoteKind = iota
	// CutOnce: of pieces that lie on two plies one is wanted in their place.
	CutOnce
	// LittleMore is bought than the lay takes, so that straightening may not come out
	// of it.
	LittleMore
	// LittleSpare is left of a cloth that is there already.
	LittleSpare
	// Unmatched: what the plan has Dropped.
	Unmatched
	// Unsure: pieces whose outlines are approximate, so that the bound leaves them out.
	Unsure
	// LaidByHand: pieces that stay where a hand has laid them.
	LaidByHand
	// InARow: several remnants are shown as one cloth.
	InARow
	// OneHanded: pieces of which several are cut, all the same way up, though they are not
	// their own mirror images.
	OneHanded
	// AllowanceUnknown: pieces of whose outlines nobody said what seam allowance they have.
	AllowanceUnknown
)

// Note is a caution for the maker about a plan.
type Note struct {
	Of NoteKind
	// Pieces that it is about, each once. May be empty.
	Pieces []string
	// Length that is left, mm; of Unsure and others 0.
	Length float64
	// Text of what was Said; empty of the others.
	Text string
}
