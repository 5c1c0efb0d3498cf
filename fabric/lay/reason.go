package lay

import (
	"errors"
	"fmt"
)

// Reason says why something cannot be laid, and what would help.
type Reason struct {
	// Piece that stands in the way; empty when it is the cloth or the lay.
	Piece string
	Why   string
}

// Error names the piece first.
func (r Reason) Error() string {
	if r.Piece == "" {
		return r.Why
	}
	return r.Piece + ": " + r.Why
}

// Because makes the reason of a piece by the rules of fmt.Sprintf.
func Because(piece, format string, args ...any) error {
	return Reason{Piece: piece, Why: fmt.Sprintf(format, args...)}
}

// Reasons takes an error apart: several that were joined, or a single one. What
// is no Reason is one of no piece.
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
	return []Reason{{Why: err.Error()}}
}
