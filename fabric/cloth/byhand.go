package cloth

import "github.com/paulmach/orb"

// HandLaid are pieces that a hand has laid on the cloth in one width and lay. All others
// are laid round them.
type HandLaid struct {
	// Width of the cloth, mm, from edge to edge.
	Width float64
	// Lay is the number of the lay among its constants (see the room of lays).
	Lay int
	// FoldedIn is how far a selvedge is folded in, mm, in the lay that does so.
	FoldedIn float64
	Pieces   []HandPiece
}

// HandPiece is a piece where a hand has laid it: mirrored in x first if it lies face down,
// then turned counter-clockwise by Turn degrees about its origin, then moved to At, mm in
// the frame of the lay.
type HandPiece struct {
	Name, Garment, Size string
	Copy                int // from 1; 0 is any
	At                  orb.Point
	Turn                float64
	FaceDown, OnFold    bool
	// OnOpen says that it lies on the open part of a lay of two parts, not on the folded.
	OnOpen bool
}
