package lay

import (
	"errors"

	"ellwand/fabric/cloth"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/seams"
)

// Reason says why something cannot be laid: what stands in the way, with the figures of
// it. Its sentence, and what would help, is made in fabric/words.
type Reason struct {
	Of Obstacle
	// Piece that stands in the way; empty when it is the cloth or the lay.
	Piece string
	// Pieces are several that stand in the way together, named with their counts.
	Pieces []string
	// Edge or Point of the piece that it is about.
	Edge  seams.Name
	Point marks.Name
	// Task that Pieces are named for; Points that there are in place of Point.
	Task   Task
	Points []marks.Name
	// Grain and Nap that bind the piece or the cloth.
	Grain pieces.GrainLie
	Nap   cloth.Nap
	// Across says that it is about the way across the cloth, not along.
	Across bool
	// Count of pieces that are wanted.
	Count int
	// Takes is what is needed and Room what there is, mm; of AreaShort mm².
	Takes, Room float64
	// Width beside a Room that is a length, mm.
	Width float64
	// Throughout is the lay that does as well.
	Throughout Kind
	// Text of an obstacle that is Told.
	Text string
}

// Error names the piece and what is in the way; people read the sentence of fabric/words.
func (r Reason) Error() string {
	what := string(r.Of)
	if r.Of == Told {
		what = r.Text
	}
	if r.Piece == "" {
		return what
	}
	return r.Piece + ": " + what
}

// Reasons takes an error apart: several that were joined, or a single one. What
// is no Reason is one of no piece, as it was told.
func Reasons(err error) []Reason {
	if err == nil {
		return nil
	}
	if joined, several := err.(interface{ Unwrap() []error }); several {
		var out []Reason
		for _, one := range joined.Unwrap() {
			out = append(out, Reasons(one)...)
		}
		return out
	}
	var reason Reason
	if errors.As(err, &reason) {
		return []Reason{reason}
	}
	return []Reason{{Of: Told, Text: err.Error()}}
}
