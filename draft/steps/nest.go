package steps

import (
	"strings"

	"ellwand/draft/construct"
	"ellwand/pieces/measure"
)

// Nest is a job drafted in several sizes, to be drawn one over the other.
type Nest struct {
	// Sizes in their order: "10", "12".
	Sizes []string
	// Documents are the job in each size: the same garments in the same order.
	Documents []Document
}

// nested is one piece in every size that has it.
type nested struct {
	sizes []string
	all   []content
}

// pieces of the garment with an index, each in all sizes.
func (n Nest) pieces(garment int) []nested {
	var out []nested
	for i, d := range n.Documents {
		for _, c := range d.Garments[garment].contents(d.Unit) {
			at := indexOf(out, c.head)
			if at == len(out) {
				out = append(out, nested{})
			}
			out[at].sizes, out[at].all = append(out[at].sizes, n.Sizes[i]), append(out[at].all, c)
		}
	}
	return out
}

func indexOf(list []nested, head string) int {
	for i, p := range list {
		if p.all[0].head == head {
			return i
		}
	}
	return len(list)
}

// alike parts the sizes into those whose points mean the same: a size with
// another dart is numbered otherwise.
func (p nested) alike() []nested {
	var out []nested
next:
	for i, c := range p.all {
		for k := range out {
			if sameNumbers(out[k].all[0].sheet, c.sheet) {
				out[k].sizes, out[k].all = append(out[k].sizes, p.sizes[i]), append(out[k].all, c)
				continue next
			}
		}
		out = append(out, nested{p.sizes[i : i+1 : i+1], p.all[i : i+1 : i+1]})
	}
	return out
}

// sameNumbers says that two drafts have the same points, and the same outline
// through them, which their last step names.
func sameNumbers(a, b construct.Sheet) bool {
	return len(a.Points) == len(b.Points) && a.Steps[len(a.Steps)-1].Do == b.Steps[len(b.Steps)-1].Do
}

// gradeRow is a point or a seam with a figure for each size.
type gradeRow struct {
	name    string
	figures []string
	rule    string
}

// placesNote explains the table of points.
const placesNote = "Each point by how far it lies to the right of 1 and above it, a point to the left or below with " +
	"a minus: square across from 1, then up or down. Point 1 of all sizes is one; how far the curves bend is on the " +
	"sheet of each size."

// places lists where every point lies in each size, from the first.
func (p nested) places(unit measure.Unit) []gradeRow {
	var out []gradeRow
	for _, step := range p.all[0].sheet.Steps {
		if step.To <= 1 {
			continue
		}
		row := gradeRow{name: construct.Numbers(p.all[0].sheet.Points[step.To-1]), rule: step.RuleText(unit)}
		for _, c := range p.all {
			origin, at := c.sheet.Points[0], c.sheet.Points[step.To-1]
			row.figures = append(row.figures, signed(at.X()-origin.X(), unit)+" | "+signed(at.Y()-origin.Y(), unit))
		}
		out = append(out, row)
	}
	return out
}

// signed words a length without its unit, which stands above the table.
func signed(mm float64, unit measure.Unit) string {
	words := construct.Length(mm).In(unit)
	return strings.TrimSuffix(strings.TrimSuffix(words, " cm"), " in")
}

// seamTable lists the seams with their length in each size.
func (p nested) seamTable() []gradeRow {
	var out []gradeRow
	for _, line := range p.all[0].seams {
		row := gradeRow{name: line.name}
		for _, c := range p.all {
			length := ""
			for _, other := range c.seams {
				if other.name == line.name {
					length = other.length
				}
			}
			row.figures = append(row.figures, length)
		}
		out = append(out, row)
	}
	return out
}
