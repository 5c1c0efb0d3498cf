package job

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/part"
	"ellwand/pieces/seams"
)

func (r *resolver) parts(path Path, asked []Part, cloth string) []part.Options {
	var out []part.Options
	for i, p := range asked {
		inner := path.Entry(i)
		if p.Kind == "" {
			r.fault(inner, strict.Missing, "part %d has no kind; add one of: %s", i+1, joined(p.Kind.Words()))
			continue
		}
		kind := chooseNamed(r.values, inner.Key("kind"), "the part's kind", p.Kind)
		called := string(kind)
		options := part.Options{
			Kind:      kind,
			Name:      string(p.Name),
			Cloth:     r.clothNamed(inner.Key("cloth"), "part "+called, p.Cloth, cloth),
			Depth:     r.optional(inner.Key("depth"), called+": the depth", p.Depth),
			Length:    r.optional(inner.Key("length"), called+": the length", p.Length),
			Fullness:  r.fullness(inner.Key("fullness"), called, p.Fullness),
			Stand:     r.optional(inner.Key("stand"), called+": the stand", p.Stand),
			Overlap:   r.optional(inner.Key("overlap"), called+": the overlap", p.Overlap),
			Shape:     chooseNamed(r.values, inner.Key("shape"), called+": the shape", p.Shape),
			Of:        string(p.Of),
			FacedEdge: seams.Called(string(p.Edge)),
		}
		if p.Grain != "" {
			options.Grain = chooseNamed(r.values, inner.Key("grain"), called+": the grain", p.Grain)
		}
		if p.Joins != "" {
			options.Joins = r.count(inner.Key("joins"), called+": joins", p.Joins)
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
