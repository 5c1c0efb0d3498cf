package steps

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/measure"
)

// NestProven reads the tables of a job in several sizes again: each place is held against
// the point that it is said to be of, in its size, and each length against the edges of
// its seam.
func NestProven(n Nest) error {
	var faults []error
	for i := range n.Documents[0].Garments {
		for _, p := range n.pieces(i) {
			if err := p.readAgain(n.Documents[0].Unit); err != nil {
				faults = append(faults, fmt.Errorf("the draft of the %s in several sizes is wrong and is not shown: %w",
					p.all[0].head, err))
			}
		}
	}
	return errors.Join(faults...)
}

func (p nested) readAgain(unit measure.Unit) error {
	var faults []error
	for _, group := range p.alike() {
		rows := group.places(unit)
		at := 0
		for _, step := range group.all[0].sheet.Steps {
			if step.To <= 1 {
				continue
			}
			faults = append(faults, group.placeReadAgain(rows[at], step.To, unit))
			at++
		}
	}
	for i, row := range p.seamTable() {
		faults = append(faults, p.seamReadAgain(row, i, unit))
	}
	return errors.Join(faults...)
}

// placeReadAgain holds the places of a point in all sizes against the drafts.
func (p nested) placeReadAgain(row gradeRow, number int, unit measure.Unit) error {
	for i, c := range p.all {
		from, to := c.sheet.Points[0].At, c.sheet.Points[number-1].At
		across, up, _ := strings.Cut(row.figures[i], " | ")
		for k, text := range []string{across, up} {
			if err := saidIn(text+" "+unit.System().Unit().String(), to[k]-from[k], unit); err != nil {
				return fmt.Errorf("point %s in size %s: %w", row.name, p.sizes[i], err)
			}
		}
	}
	return nil
}

// seamReadAgain holds the length of a seam in all sizes against its edges.
func (p nested) seamReadAgain(row gradeRow, seam int, unit measure.Unit) error {
	name := p.all[0].seams[seam].name
	for i, c := range p.all {
		length, has := along(c.piece, name)
		if !has && row.figures[i] == "" {
			continue
		}
		if err := saidIn(row.figures[i], length, unit); err != nil {
			return fmt.Errorf("%s in size %s: %w", row.name, p.sizes[i], err)
		}
	}
	return nil
}

// alongTolerance, mm, of a curve that is measured by its chords [source.OwnChoice].
const alongTolerance = 0.01

// along is how long the seam of a name is, darts closed, and whether the piece has it.
func along(piece pieces.Piece, name string) (length float64, has bool) {
	for _, edge := range piece.Edges {
		if edge.Name.Seam().String() != name {
			continue
		}
		has = true
		if edge.Name.IsMouth() {
			continue
		}
		line := edge.Path.Flatten(alongTolerance)
		for i := 1; i < len(line); i++ {
			length += math.Hypot(line[i][0]-line[i-1][0], line[i][1]-line[i-1][1])
		}
	}
	return length, has
}

// saidIn proves that a text says a length, mm, as it is rounded in a unit.
func saidIn(text string, want float64, unit measure.Unit) error {
	length, err := measure.Parse(strings.TrimPrefix(text, "-"), unit)
	if strings.HasPrefix(text, "-") {
		length = -length
	}
	if off := math.Abs(float64(length) - want); err != nil || !(off <= unit.System().Step()/2+readTolerance) {
		return fmt.Errorf("%q stands where %.2f mm are meant", text, want)
	}
	return nil
}
