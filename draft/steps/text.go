package steps

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"ellwand/draft"
	"ellwand/draft/construct"
	"ellwand/pieces/text"
)

// WriteText writes the draft sheet as plain text.
func WriteText(w io.Writer, d Document) error {
	var b strings.Builder
	b.WriteString(underlined(d.Title, "="))
	for _, garment := range d.Garments {
		fmt.Fprintf(&b, "\n%s\n", garment.Name)
		for _, line := range garment.bodyLines(d) {
			fmt.Fprintf(&b, "  %s\n", line)
		}
		for _, c := range garment.contents(d.Unit) {
			c.writeText(&b)
		}
		if rows := garment.truingLines(d); len(rows) > 0 {
			fmt.Fprintf(&b, "\nSeams of the %s that are sewn together\n", garment.Name)
			for _, row := range rows {
				fmt.Fprintf(&b, "  %s\n", row)
			}
		}
	}
	_, err := io.WriteString(text.Writer(w), b.String())
	return err
}

// underlined is a heading on a line of its own, and a line of the same length below.
func underlined(heading, by string) string {
	heading = text.Line(heading)
	return heading + "\n" + strings.Repeat(by, utf8.RuneCountInString(heading)) + "\n"
}

func (c content) writeText(b *strings.Builder) {
	fmt.Fprintf(b, "\n%s%s\n", underlined(c.head, "-"), c.cut)
	for i, step := range c.steps {
		fmt.Fprintf(b, "%3d. %s\n", i+1, step)
	}
	if len(c.curves) > 0 {
		fmt.Fprintf(b, "Curves. %s\n", curvesNote)
		for _, curve := range c.curves {
			fmt.Fprintf(b, "  %s\n", curve)
		}
	}
	fmt.Fprintf(b, "Check the seams, darts closed, then add the allowance\n")
	for _, s := range c.seams {
		fmt.Fprintf(b, "  %-22s %10s   allowance %s\n", s.name, s.length, s.allowance)
	}
}

// bodyLines are the measurements of a garment.
func (g Garment) bodyLines(d Document) []string {
	var out []string
	for _, name := range draft.Measurements() {
		if value, ok := g.Body.Get(name); ok {
			line := fmt.Sprintf("%s %s", name, construct.Length(value).In(d.Unit))
			if rule, derived := g.Derived[name]; derived {
				line += ", derived: " + rule.In(d.Unit)
			}
			out = append(out, line)
		}
	}
	return out
}

// truingLines compare the seams that are sewn together.
func (g Garment) truingLines(d Document) []string {
	in := func(mm float64) string { return construct.Length(mm).In(d.Unit) }
	var out []string
	for _, r := range g.Truing.Rows {
		out = append(out, fmt.Sprintf("%s: %s %s, %s %s: %s", r.Seam, r.Of, in(r.OfLength), r.Against,
			in(r.AgainstLength), r.Verdict.In(d.Unit)))
	}
	return out
}
