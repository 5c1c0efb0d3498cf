package words

import (
	"fmt"

	"ellwand/cmd/ellwand/app"
	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/plan"
	"ellwand/pieces/drawing"
)

// EndedEarly says that a search on one cloth was ended before its work was done, and
// how much of it was.
func EndedEarly(work *job.Work, c cloth.Cloth, ended plan.Ended) string {
	return fmt.Sprintf("%s, %s wide: %s", c.Name, work.Format(c.Width), ended.Say())
}

// Kept says that an answer rests on what an earlier search found.
const Kept = "An earlier search found this lay."

// SinceQuote says how a plan differs from what the job was last quoted on. None where it
// does not, or where that is not known.
func SinceQuote(work *job.Work, plan app.Planned) []string {
	switch plan.SinceQuote {
	case app.JobChanged:
		return []string{fmt.Sprintf("%s: the job has changed since it was quoted: the quote has the mark %s, this plan %s; "+
			"quote it again with ellwand quote %s", plan.Cloth.Name, plan.Quoted, plan.Mark, work.File)}
	case app.LayChanged:
		return []string{fmt.Sprintf("%s: the job is as it was quoted, but is laid otherwise: the quote has the mark %s, "+
			"this plan %s; give the options of the quote to draw that one", plan.Cloth.Name, plan.Quoted, plan.Mark)}
	}
	return nil
}

// InsteadOf says that another lay is drawn than was asked for, and why.
func InsteadOf(plan app.Planned) string {
	return fmt.Sprintf("%s is laid %s, not %s as asked: %s", plan.Cloth.Name, plan.Lay.Way(), plan.InsteadOf.Way(),
		plan.Gainless)
}

// Remnants says that what is there already is not asked about: what reckons how
// much to buy leaves it out.
func Remnants(work *job.Work) []string {
	var out []string
	for _, cloth := range work.Cloths {
		switch {
		case len(cloth.Remnants) > 0:
			out = append(out, fmt.Sprintf("%s: this is for cloth to be bought; ellwand remnant %s says whether its "+
				"remnants are enough", cloth.Cloth.Name, work.File))
		case cloth.Length > 0:
			out = append(out, fmt.Sprintf("%s: this is for cloth to be bought; ellwand remnant %s says whether the %s "+
				"that are there are enough", cloth.Cloth.Name, work.File, work.FormatLong(cloth.Length)))
		}
	}
	return out
}

// Letters says which names of a job stand otherwise on paper, because the
// typeface lacks some of their letters.
func Letters(work *job.Work) []string {
	names := []string{work.Title()}
	for _, made := range work.Garments {
		names = append(names, made.Name)
		for _, piece := range made.Pieces {
			names = append(names, piece.Name, piece.Size)
		}
	}
	for _, cloth := range work.Cloths {
		names = append(names, cloth.Cloth.Name)
	}
	var out []string
	said := map[string]bool{}
	for _, name := range names {
		if said[name] || drawing.IsPrintable(name) {
			continue
		}
		said[name] = true
		out = append(out, fmt.Sprintf("%q stands as %q on paper: the typeface there has the letters of Latin scripts, "+
			"Greek, Cyrillic, "+
			"Armenian and Georgian, but not all of these; give a name in letters that it has", name, drawing.Printable(name)))
	}
	return out
}
