package job

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/part"
	"ellwand/pieces/language"
	"ellwand/pieces/seams"
)

func (r *resolver) parts(path Path, asked []Part, cloth string) []part.Options {
	var out []part.Options
	for i, p := range asked {
		inner := path.Entry(i)
		if p.Kind == "" {
			r.fault(inner, strict.Missing, "part %d has no kind; add one of: %s",
				"von Zubehörteil %d fehlt, was es ist; es gibt: %s", i+1, joined(p.Kind.Words()))
			continue
		}
		kind := chooseNamed(r.values, inner.Key("kind"), language.Say("the part's kind", "Art des Zubehörteils"),
			p.Kind)
		called := language.Say("%s", "%s", kind)
		options := part.Options{
			Kind: kind,
			Name: string(p.Name),
			Cloth: r.clothNamed(inner.Key("cloth"), language.Say("part %s", "Zubehörteil %s", called),
				p.Cloth, cloth),
			Depth:     r.optional(inner.Key("depth"), called.Its("the depth", "Höhe"), p.Depth),
			Length:    r.optional(inner.Key("length"), called.Its("the length", "Länge"), p.Length),
			Fullness:  r.fullness(inner.Key("fullness"), called, p.Fullness),
			Stand:     r.optional(inner.Key("stand"), called.Its("the stand", "Steg"), p.Stand),
			Overlap:   r.optional(inner.Key("overlap"), called.Its("the overlap", "Überdeckung"), p.Overlap),
			Shape:     chooseNamed(r.values, inner.Key("shape"), called.Its("the shape", "Form"), p.Shape),
			Of:        string(p.Of),
			FacedEdge: seams.Called(string(p.Edge)),
		}
		if p.Grain != "" {
			options.Grain = chooseNamed(r.values, inner.Key("grain"), called.Its("the grain", "Fadenlauf"), p.Grain)
		}
		if p.Joins != "" {
			options.Joins = r.count(inner.Key("joins"), called.Its("joins", "Ansatznähte"), p.Joins)
		}
		options.ClothWidth = r.narrowest(options.Cloth)
		out = append(out, options)
	}
	return out
}

// narrowest is the usable width of the narrowest of a cloth's widths; 0 when it
// is not known.
func (r *resolver) narrowest(cloth string) float64 {
	for _, offer := range r.work.Cloths {
		if offer.Cloth.Name == cloth && len(offer.Widths) > 0 {
			return slices.Min(offer.Widths) - 2*offer.Cloth.Selvedge
		}
	}
	return 0
}
