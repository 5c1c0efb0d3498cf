package cloth

import (
	"slices"

	"ellwand/pieces/seams"
)

// Side is one of the two selvedges.
type Side int

const (
	// Near is the selvedge nearest to the cutter, the cloth lying right side up
	// with the cut end on the left.
	Near Side = iota
	// Far is the other one.
	Far
)

// sides in the order of the constants.
var sides = []string{"near", "far"}

// String gives "near" or "far".
func (s Side) String() string {
	if s < Near || s > Far {
		return "unknown"
	}
	return sides[s]
}

// Words for the selvedges, in the order of the constants.
func (Side) Words() []string { return sides }

// Border is a print that runs along one selvedge. Pieces lie across the cloth
// there, the main ones with their hem on its line (Vilumsone-Nemes, Industrial
// Cutting of Textile Materials). The zero value is none.
type Border struct {
	Selvedge Side
	// Line is how far the line for the hems lies from the outer edge of that
	// selvedge, mm.
	Line float64
	// Pieces names those whose hem lies on the line; empty is no border.
	Pieces []string
	// Hem names the edge that is their hem; empty is the one that is called so.
	Hem seams.Name
}

// Has reports whether a piece of that name lies on the border.
func (b Border) Has(piece string) bool { return slices.Contains(b.Pieces, piece) }

// BorderOffCloth is a line of the border that lies a Length from the selvedge.
const BorderOffCloth Defect = "border off the cloth"

// faults are a line off the cloth.
func (b Border) faults(width float64, _ Repeat) []Fault {
	if !IsLength(b.Line) || b.Line >= width && width > 0 {
		return []Fault{{Of: BorderOffCloth, Length: b.Line}}
	}
	return nil
}
