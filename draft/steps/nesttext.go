package steps

import (
	"fmt"
	"io"
	"strings"

	"ellwand/pieces/measure"
	"ellwand/pieces/text"
)

// WriteNestText writes the sizes of a job side by side as plain text: for each
// piece where its points lie and how long its seams are.
func WriteNestText(w io.Writer, n Nest) error {
	var b strings.Builder
	first := n.Documents[0]
	fmt.Fprintf(&b, "%ssizes %s, lengths in %s\n", underlined(first.Title, "="), strings.Join(n.Sizes, ", "),
		unitName(first.Unit))
	for i, garment := range first.Garments {
		fmt.Fprintf(&b, "\n%s\n", garment.Name)
		for _, p := range n.pieces(i) {
			p.writeText(&b, first.Unit)
		}
	}
	_, err := io.WriteString(text.Writer(w), b.String())
	return err
}

func isInch(unit measure.Unit) bool { return unit.System() == measure.Imperial }

func unitName(unit measure.Unit) string {
	if isInch(unit) {
		return "inches, to the nearest 1/16"
	}
	return "cm, to the nearest millimetre"
}

func (p nested) writeText(b *strings.Builder, unit measure.Unit) {
	head := p.all[0].head
	fmt.Fprintf(b, "\n%s%s\n", underlined(head, "-"), p.all[0].cut)
	fmt.Fprintf(b, "%s\n", placesNote)
	for _, group := range p.alike() {
		writeGrades(b, "point", group.sizes, group.places(unit))
	}
	fmt.Fprintf(b, "Seams, darts closed\n")
	writeGrades(b, "", p.sizes, p.seamTable())
}

// writeGrades writes a table with a column for each size.
func writeGrades(b *strings.Builder, of string, sizes []string, rows []gradeRow) {
	const wide = 17
	fmt.Fprintf(b, "  %-22s", of)
	for _, size := range sizes {
		fmt.Fprintf(b, "%*s", wide, size)
	}
	fmt.Fprintln(b)
	for _, row := range rows {
		fmt.Fprintf(b, "  %-22s", row.name)
		for _, figure := range row.figures {
			fmt.Fprintf(b, "%*s", wide, figure)
		}
		if row.rule != "" {
			fmt.Fprintf(b, "   %s", row.rule)
		}
		fmt.Fprintln(b)
	}
}
