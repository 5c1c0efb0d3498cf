package verify

import (
	"fmt"
	"math"

	"github.com/paulmach/orb"

	"ellwand/nest/layout"
)

// laid is a piece where the layout puts it.
type laid struct {
	layout.Placement
	*layout.Region
}

type verifier struct {
	problem layout.Problem
	reach   float64
	pieces  []laid
	faults  []string
}

func (v *verifier) fault(format string, values ...any) {
	v.faults = append(v.faults, fmt.Sprintf(format, values...))
}

// name is what a piece is called in faults: its item, and which copy of it
// when there are several.
func (v *verifier) name(at layout.Placement) string {
	name := v.problem.ItemName(at.Item)
	if v.problem.Items[at.Item].Copies == 1 && at.Copy == 0 {
		return name
	}
	return fmt.Sprintf("%s (copy %d)", name, at.Copy+1)
}

// place for people: enough digits to find it with a tape.
func spot(q orb.Point) string { return fmt.Sprintf("x %.6g, y %.6g", q[0], q[1]) }

func finite(value float64) bool { return !math.IsNaN(value) && !math.IsInf(value, 0) }
