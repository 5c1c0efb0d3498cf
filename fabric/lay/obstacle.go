package lay

// Obstacle is what stands in the way of a lay. A rule of the cloth has its own; the
// sentence of each is in fabric/words.
type Obstacle string

// The obstacles of every cloth.
const (
	// Told is in the words of whoever found it.
	Told Obstacle = "told"
	// NothingToCut from the cloth.
	NothingToCut Obstacle = "nothing to cut"
	// NoSuchPiece: none of the Pieces, named for a Task, is cut from the cloth.
	NoSuchPiece Obstacle = "no such piece"
	// NotJoined: no pieces are joined by the Point, but by the Points.
	NotJoined Obstacle = "not joined"
	// NamedTwice: two pieces have the name of this one.
	NamedTwice Obstacle = "named twice"

	// WarpTurned: the upper ply's warp runs the other way, and the cloth goes one way.
	WarpTurned Obstacle = "warp turned"
	// PieceTurned: the same for a single piece that goes one way.
	PieceTurned Obstacle = "piece turned"
	// OffFold: with the Edge on the fold the grainline would not lie as its Grain.
	OffFold Obstacle = "off the fold"
	// OddCount: two plies give two at a time, and the Count is odd.
	OddCount Obstacle = "odd count"
	// Unpaired: two plies give a right and a left, and the piece is neither a pair nor
	// its own mirror image.
	Unpaired Obstacle = "unpaired"
	// FlawOnFold runs along the fold.
	FlawOnFold Obstacle = "flaw on the fold"
	// FlawsLeave too little Room across in one piece.
	FlawsLeave Obstacle = "between flaws"
	// WiderThanFolded: it Takes more across than the Room of the folded cloth.
	WiderThanFolded Obstacle = "wider than the folded cloth"
	// WiderThanHalf: the same from a fold to where the selvedges meet.
	WiderThanHalf Obstacle = "wider than half the cloth"
	// WiderThanCloth: the same between the selvedges.
	WiderThanCloth Obstacle = "wider than the cloth"
	// FlawsMove: in a lay across the cloth, flaws lie elsewhere at each length.
	FlawsMove Obstacle = "flaws on a cloth across"

	// AllOrNothing can be cut from the folded part of a lay of two parts.
	AllOrNothing Obstacle = "all or nothing double"
	// NothingDouble can be cut from two plies.
	NothingDouble Obstacle = "nothing double"
	// NotShared: the pieces do not share out between two plies and one.
	NotShared Obstacle = "not shared out"
	// LastOnPart: without the piece nothing lies on one of the parts.
	LastOnPart Obstacle = "last on its part"
	// NoGain: a lay of two parts takes no less than Throughout does; that Takes so much
	// less, or no less with less to chalk.
	NoGain Obstacle = "no gain"

	// FixedNowhereIn: pieces stay in a lay with one selvedge folded in, and how far that is
	// folded in is not said, or is no part of the width.
	FixedNowhereIn Obstacle = "fixed, folded in nowhere"
	// FixedTurned, or more of it than are to be cut.
	FixedTurned Obstacle = "fixed and turned"
	// FixedOnFlaw, or over the edge.
	FixedOnFlaw Obstacle = "fixed on a flaw"
	// FixedTooNear to each other.
	FixedTooNear Obstacle = "fixed too near"

	// NothingLeft of a remnant, Room long, after straightening and wetting.
	NothingLeft Obstacle = "nothing left"
	// LengthShort: the Pieces, or all where none is named, take more length than there is.
	LengthShort Obstacle = "length short"
	// AreaShort: the pieces cover more than there is.
	AreaShort Obstacle = "area short"
	// TooWideTogether are the Pieces.
	TooWideTogether Obstacle = "too wide together"
	// TooLong is the piece among Pieces, in every turn.
	TooLong Obstacle = "too long"
	// NoPlace clear of the flaws for the piece among Pieces.
	NoPlace Obstacle = "no place"
)
