package printing

import (
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/pieces/measure"
	"ellwand/pieces/paper"
)

// Asked is what is to be printed of a job.
type Asked struct {
	// Paper by its name: a4, letter, a0; A4 where it is empty.
	Paper string
	// Cloth by its name; the first where it is empty. Width of it as "1400mm", and Lay;
	// what the job is quoted on, or else the best, where they are empty.
	Cloth, Width, Lay string
	// Choice of pieces at full size and for the projector, and the size whose seams they
	// show; the first where it is empty.
	Choice app.Choice
	Seams  string
	// Search for the lays.
	Search app.Search
}

// small is the paper of what is read: a letter's, or A4.
func (a Asked) small() paper.Paper {
	if strings.EqualFold(a.Paper, "letter") {
		return paper.Letter
	}
	return paper.A4
}

// What a printer leaves white, and what two sheets both show, mm: as the commands have it
// [source.OwnChoice].
const margin, overlap = 10.0, 12.0

// sheets of what is printed at full size, and what people call them.
func (a Asked) sheets(work *job.Work) (paper.Paper, string, error) {
	name := a.Paper
	if name == "" {
		name = "a4"
	}
	unit := measure.Millimetre
	if work.InInches() {
		unit = measure.Inch
	}
	out, err := paper.Parse(name, unit)
	if err != nil {
		return out, "", err
	}
	out.Margin, out.Overlap = margin, overlap
	return out, strings.ToUpper(name[:1]) + name[1:], out.Check()
}

// width asked for, mm; 0 where none is.
func (a Asked) width() float64 {
	mm, err := strconv.ParseFloat(strings.TrimSuffix(a.Width, "mm"), 64)
	if err != nil {
		return 0
	}
	return mm
}
