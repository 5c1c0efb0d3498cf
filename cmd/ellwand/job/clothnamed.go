package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
)

func (r *resolver) width(offer *Goods, path Path, name language.Sentence, text Measure) {
	width, ok := r.positive(path, name.Its("the width", "Breite"), text)
	if !ok {
		return
	}
	if width <= 2*offer.Cloth.Selvedge {
		r.fault(path, strict.OutOfRange,
			"%s: a width of %s leaves nothing between selvedges of %s on each side; give the width from edge to edge",
			"%s: eine Breite von %s lässt nichts zwischen Webkanten von je %s; geben Sie die Breite "+
				"von Kante zu Kante an",
			name, r.work.Format(width), r.work.Format(offer.Cloth.Selvedge))
		return
	}
	offer.Widths = append(offer.Widths, width)
}

// clothNames of the job, for messages and look-ups.
func (r *resolver) clothNames() []string {
	names := make([]string, len(r.work.Cloths))
	for i, offer := range r.work.Cloths {
		names[i] = offer.Cloth.Name
	}
	return names
}

// clothNamed finds a cloth by the name a piece gives; an empty one is the
// fallback.
func (r *resolver) clothNamed(path Path, what language.Sentence, name Text, fallback string) string {
	if name == "" {
		return fallback
	}
	for _, known := range r.clothNames() {
		if strict.Plain(known) == strict.Plain(string(name)) {
			return known
		}
	}
	r.fault(path, strict.Unknown, "%s: there is no cloth %q under cloths:; %s",
		"%s: einen Stoff %q hat der Auftrag nicht; %s", what, string(name),
		strict.Hint(string(name),
			r.clothNames()))
	return fallback
}
