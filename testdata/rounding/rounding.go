// Package rounding finds what may give other last bits on another processor:
// products that a compiler may fuse with an addition, and functions of math that
// do.
//
// Go lets x*y + z skip the rounding of the product, and on some processors it
// does; only a conversion, float64(x*y) + z, forbids it. (The specification says
// that an assignment forbids it too, but Go 1.26 fuses across assignments and
// inlined calls.) Where a search branches on the sum, its layouts then differ
// from processor to processor. Products by a power of two are exact.
package rounding

import (
	"fmt"
	"go/token"

	"ellwand/testdata/typed"
)

// Fault is a product that is added, or subtracted, without being rounded, or a
// function that is not the same everywhere.
type Fault struct {
	// Begin and End are its place; End is after it.
	Begin, End token.Position
	// Function is its name; a product has none.
	Function string
}

// String says what to do, for the message of a test.
func (f Fault) String() string {
	if f.Function != "" {
		return fmt.Sprintf("%v: %s differs from processor to processor; take that of nest/portable", f.Begin, f.Function)
	}
	return fmt.Sprintf("%v: round this product by a conversion, float64(a*b)", f.Begin)
}

// Faults returns those of the packages, without their tests, in the order of the
// files. The patterns are those of go list. Errors: a package that does not
// compile.
func Faults(patterns ...string) ([]Fault, error) {
	packages, files, err := typed.Packages(patterns...)
	if err != nil {
		return nil, err
	}
	var out []Fault
	for _, p := range packages {
		out = append(out, newFinder(files, p.Info).find(p.Files)...)
	}
	return out, nil
}
