package job

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/part"
	"ellwand/pieces/seams"
)

// Part asks for a smaller piece that is drafted to fit the seams it joins.
type Part struct {
	Kind     Choice[part.Kind]  `yaml:"kind" jsonschema:"required" jsonschema_description:"what it is"`
	Name     Text               `yaml:"name" jsonschema_description:"name of the piece, in place of the kind"`
	Cloth    Text               `yaml:"cloth" jsonschema_description:"cloth it is cut from; the garment's if not given"`
	Depth    Measure            `yaml:"depth" jsonschema_description:"finished depth of a collar (of a shirt collar its fall), facing, cuff, waistband, belt, tie or placket; the width that a bias strip is cut to; height of a patch pocket; finished length of a skirt or panel"`
	Length   Measure            `yaml:"length" jsonschema_description:"finished length along the seam; of all bias strips joined; of the slit of a placket; of the opening of a pocket bag; width of a patch pocket; worked out or usual if not given"`
	Fullness Text               `yaml:"fullness" jsonschema_description:"how many times its finished length a skirt is gathered from; 2 if not given"`
	Stand    Measure            `yaml:"stand" jsonschema_description:"depth of the stand of a shirt collar; 3 cm if not given"`
	Overlap  Measure            `yaml:"overlap" jsonschema_description:"how far front and back overlap at the shoulder tip when a flat collar is drawn on them; 1.5 cm if not given"`
	Shape    Choice[part.Shape] `yaml:"shape" jsonschema_description:"lower edge of a patch pocket; square if not given"`
	Grain    Choice[part.Grain] `yaml:"grain" jsonschema_description:"how a straight strip lies, such as a waistband: lengthwise (its length along the warp), crosswise (from selvedge to selvedge) or either, as takes less cloth; not given, it lies as its kind is drawn"`
	Joins    Count              `yaml:"joins" jsonschema_description:"by how many seams across it a straight strip is pieced together from equal lengths; none if not given"`
	Of       Text               `yaml:"of" jsonschema_description:"the piece that a facing is drawn from: front skirt"`
	Edge     Text               `yaml:"edge" jsonschema_description:"the edge that a facing faces: waist"`
}

func (r *resolver) parts(path Path, asked []Part, cloth string) []part.Options {
	var out []part.Options
	for i, p := range asked {
		inner := path.Entry(i)
		if p.Kind == "" {
			r.fault(inner, strict.Missing, "part %d has no kind; add one of: %s", i+1, joined(p.Kind.Words()))
			continue
		}
		kind := chooseNamed(r, inner.Key("kind"), "the part's kind", p.Kind)
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
			Shape:     chooseNamed(r, inner.Key("shape"), called+": the shape", p.Shape),
			Of:        string(p.Of),
			FacedEdge: seams.Called(string(p.Edge)),
		}
		if p.Grain != "" {
			options.Grain = chooseNamed(r, inner.Key("grain"), called+": the grain", p.Grain)
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
