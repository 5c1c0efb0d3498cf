package job

import (
	"maps"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

// What cloth is sold in, and what is usual about it, mm: up to the widest sheeting and
// curtain cloth, most of it 80 to 185 cm [source.CommonPractice]; the others are several
// times what is usual [source.OwnChoice].
var (
	soldWidths      = usual{600, 3200}
	mostWidths      = usual{800, 1850}
	usualSelvedges  = usual{0, 60}
	usualStraighten = usual{0, 250}
	usualGap        = usual{0, 30}
	usualSteps      = usual{5, 1000}
)

// cloths asks about widths that are hardly sold, and about what is much of its kind.
func (q *questioner) cloths() {
	for i, c := range q.file.Cloths {
		path, name := strict.Top("cloths").Entry(i), quoted(c.Name)
		if c.Width != "" && len(c.Remnants) == 0 && c.Length == "" {
			q.width(path.Key("width"), language.Say("cloth %s", "Stoff %s", name), c.Width)
		}
		for k, width := range c.Widths {
			q.width(path.Key("widths").Entry(k), language.Say("cloth %s", "Stoff %s", name), width)
		}
		for k, offer := range c.Offers {
			if offer.Width != "" && offer.Remnant == "" {
				q.width(path.Key("offers").Entry(k).Key("width"), language.Say("offer %s", "Angebot %s",
					quoted(offer.Name)), offer.Width)
			}
		}
		for _, of := range []struct {
			key   string
			what  language.Sentence
			text  Measure
			usual usual
		}{
			{"selvedge", language.Say("a selvedge", "eine Webkante"), c.Selvedge, usualSelvedges}, {"straighten",
				language.Say("straightening the ends", "das Begradigen der Enden"), c.Straighten,
				usualStraighten},
			{"gap", language.Say("a gap between pieces", "ein Abstand zwischen Teilen"), c.Gap, usualGap},
			{"step", language.Say("a shop's step", "eine Stufe des Ladens"), c.Step, usualSteps},
		} {
			if mm := q.length(of.text); of.text != "" && !of.usual.holds(mm) {
				q.ask(path.Key(of.key), "cloth %s: %s of %s is unusual; %s",
					"Stoff %s: %s von %s ist ungewöhnlich; %s", name, of.what, q.work.Format(mm),
					orMeant(q.meant(of.text, of.usual)))
			}
		}
	}
}

// width of cloth that is to be bought.
func (q *questioner) width(path Path, what language.Sentence, text Measure) {
	mm := q.length(text)
	if soldWidths.holds(mm) {
		return
	}
	q.ask(path, "%s is %s wide, and cloth is mostly sold %s to %s wide; %s",
		"%s ist %s breit, und Stoff wird meist %s bis %s breit verkauft; %s", what, q.work.Format(mm),
		q.work.Format(mostWidths.least), q.work.Format(mostWidths.most), orMeant(q.meant(text, mostWidths)))
}

// timesUsual is how many times its usual an allowance is before it is asked about
// [source.OwnChoice].
const timesUsual = 4

// allowances asks about those that are several times what is usual of their edge.
func (q *questioner) allowances() {
	q.allowancesAt(strict.Top("allowances"), q.file.Allowances)
	for i, garment := range q.file.Garments {
		q.allowancesAt(strict.Top("garments").Entry(i).Key("allowances"), garment.Allowances)
	}
}

func (q *questioner) allowancesAt(path Path, given map[string]Measure) {
	seam := draft.UsualAllowance(seams.Every)
	for _, key := range slices.Sorted(maps.Keys(given)) {
		of := seam
		for _, name := range draft.AllowanceNames() {
			if _, found := strict.KnownAs(key, []string{name.String()}); found {
				of = max(seam, draft.UsualAllowance(name))
			}
		}
		if mm := q.length(given[key]); mm > timesUsual*of {
			q.ask(path.Key(key), "an allowance of %s at %s is much (%s is usual); %s",
				"eine Zugabe von %s an %s ist viel (üblich sind %s); %s", q.work.Format(mm),
				strings.ReplaceAll(key, "_", " "),
				q.work.Format(of), orMeant(q.meant(given[key], usual{0.3 * of, timesUsual * of})))
		}
	}
}
