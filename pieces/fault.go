package pieces

import (
	"fmt"
	"math"
	"strconv"
)

// label names the piece in messages.
func (p Piece) label() string {
	if p.Name == "" {
		return "piece without a name"
	}
	return p.Name
}

// Fault is something that is wrong with a piece.
type Fault struct {
	// Piece is its name in messages.
	Piece string
	// What is wrong, and what to do: a sentence without the piece.
	What string
}

// Error is the whole sentence.
func (f Fault) Error() string { return f.Piece + ": " + f.What }

func (p Piece) fault(format string, values ...any) error {
	return Fault{Piece: p.label(), What: fmt.Sprintf(format, values...)}
}

// figure prints a number for people: to a thousandth, without idle zeros.
func figure(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}

func (p Piece) allowanceFault(e Edge) error {
	if !finite(e.Allowance) {
		return p.fault("the seam allowance on %q is not a number", e.Name)
	}
	return p.fault("the seam allowance on %q is %s cm; it cannot be negative", e.Name, figure(e.Allowance/10))
}
