package job

import (
	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// usualSelvedge is not cut into, on each side, mm [source.CommonPractice].
const usualSelvedge = 10

// UsualStep is what a shop rounds up to: 10 cm, or 1/8 yd for a job in inches
// [source.CommonPractice].
func UsualStep(unit measure.Unit) float64 {
	if unit == measure.Inch || unit == measure.Yard {
		return 914.4 / 8
	}
	return 100
}

// naps in the words of the job file.
var naps = []cloth.Nap{cloth.EitherWay, cloth.OneWay, cloth.OneWayPerGarment}

func (r *resolver) cloths() {
	if len(r.file.Cloths) == 0 {
		r.fault("cloths", "the job has no cloths; add at least one under cloths:, with its name and width")
	}
	seen := map[string]bool{}
	for i, cloth := range r.file.Cloths {
		path := entry("cloths", i)
		if cloth.Name == "" {
			r.fault(path, "cloth %d has no name; add one, such as: name: shell", i+1)
			continue
		}
		name := string(cloth.Name)
		if seen[Slug(name)] {
			r.fault(path, "two cloths are named %q; give each its own name", name)
		}
		seen[Slug(name)] = true
		r.work.Cloths = append(r.work.Cloths, r.cloth(path, cloth))
	}
}

func (r *resolver) cloth(path string, c Cloth) Offer {
	name := "cloth " + quoted(c.Name)
	offer := Offer{Cloth: cloth.Cloth{
		Name:     string(c.Name),
		Selvedge: usualSelvedge,
		Nap:      naps[r.choose(path+".nap", name+": the nap", string(c.Nap), napNames())],
		Step:     UsualStep(r.work.Unit),
		Inches:   r.work.InInches(),
	}}
	if c.Selvedge != "" {
		offer.Cloth.Selvedge, _ = r.length(path+".selvedge", name+": the selvedge", c.Selvedge)
	}
	if c.Step != "" {
		offer.Cloth.Step, _ = r.positive(path+".step", name+": the step", c.Step)
	}
	if c.Straighten != "" {
		offer.Cloth.Straighten, _ = r.length(path+".straighten", name+": the straightening", c.Straighten)
	}
	r.handling(path, name, c, &offer.Cloth)
	if c.Length != "" {
		offer.Length, _ = r.positive(path+".length", name+": the length", c.Length)
	}
	switch {
	case len(c.Remnants) > 0:
		r.remnants(path+".remnants", name, c, &offer)
	case c.Width != "" && len(c.Widths) > 0:
		r.fault(path+".widths", "%s has both width and widths; keep one of them", name)
	case len(c.Widths) > 0:
		for i, width := range c.Widths {
			r.width(&offer, entry(path+".widths", i), name, width)
		}
	case c.Width == "" && len(c.Offers) > 0: // each offer has its own
	default:
		r.width(&offer, path+".width", name, c.Width)
	}
	r.offers(path, c, &offer)
	if len(offer.Widths) == 0 {
		offer.Widths = offeredWidths(offer.Offers)
	}
	return offer
}

func (r *resolver) width(offer *Offer, path, name string, text Measure) {
	width, ok := r.positive(path, name+": the width", text)
	if !ok {
		return
	}
	if width <= 2*offer.Cloth.Selvedge {
		r.fault(path, "%s: a width of %s leaves nothing between selvedges of %s on each side; give the width from edge to edge",
			name, r.work.Format(width), r.work.Format(offer.Cloth.Selvedge))
		return
	}
	offer.Widths = append(offer.Widths, width)
}

func napNames() []string {
	names := make([]string, len(naps))
	for i, nap := range naps {
		names[i] = nap.String()
	}
	return names
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
func (r *resolver) clothNamed(path, what string, name Text, fallback string) string {
	if name == "" {
		return fallback
	}
	for _, known := range r.clothNames() {
		if plain(known) == plain(string(name)) {
			return known
		}
	}
	r.fault(path, "%s: there is no cloth %q under cloths:; %s", what, string(name), hint(string(name), r.clothNames()))
	return fallback
}

// emptyCloths refuses a cloth from which nothing is cut: it is a slip in a
// name more often than not.
func (r *resolver) emptyCloths() {
	if len(r.faults.List) > 0 {
		return
	}
	for i, offer := range r.work.Cloths {
		if len(r.work.PiecesOf(offer.Cloth.Name)) == 0 {
			r.fault(entry("cloths", i), "nothing is cut from cloth %q; name it in a garment's cloth, a piece's cloth or cut_from, or remove it", offer.Cloth.Name)
		}
	}
}
