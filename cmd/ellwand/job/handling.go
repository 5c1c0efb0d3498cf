package job

import (
	"strconv"

	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/remnant"
	"ellwand/fabric/words"
	"ellwand/pieces/marks"
)

// remnants reads the pieces of a cloth that are there already; the widest of
// them is the width of the cloth.
func (r *resolver) remnants(path Path, name string, c Cloth, offer *Goods) {
	if c.Width != "" || len(c.Widths) > 0 || c.Length != "" {
		r.fault(path, strict.Contradiction,
			"%s has remnants and a width or length of its own; leave those out, each remnant has its own", name)
	}
	widest := 0.0
	for i, rest := range c.Remnants {
		at := path.Entry(i)
		what := name + ": remnant " + quoted(rest.Name)
		if rest.Name == "" {
			what = name + ": remnant " + strconv.Itoa(i+1)
		}
		out, before := remnant.Offcut{Name: string(rest.Name)}, len(r.faults.List)
		isRectangle := len(rest.Outline) == 0
		switch {
		case isRectangle:
			out.Length, _ = r.positive(at.Key("length"), what+": the length", rest.Length)
			out.Width, _ = r.positive(at.Key("width"), what+": the width", rest.Width)
			widest = max(widest, out.Width)
		case rest.Length != "" || rest.Width != "":
			r.fault(at.Key("outline"), strict.Contradiction, "%s has an outline and a length or width; keep one of them", what)
		}
		for k, corner := range rest.Outline {
			p := r.point(at.Key("outline").Entry(k), what+": a corner", corner)
			out.Outline, widest = append(out.Outline, p), max(widest, p[1])
		}
		for k, flaw := range rest.Flaws {
			if f, ok := r.flaw(at.Key("flaws").Entry(k), string(c.Name), what, flaw); ok {
				out.Flaws = append(out.Flaws, f)
			}
		}
		if len(r.faults.List) == before {
			r.wholeRemnant(at, offer.Cloth, out)
		}
		offer.Remnants = append(offer.Remnants, out)
	}
	if widest > 2*offer.Cloth.Selvedge {
		offer.Widths = append(offer.Widths, widest)
	} else if widest > 0 {
		r.fault(path, strict.OutOfRange, "%s: no remnant is wider than two selvedges of %s; give its width from edge to edge",
			name, r.work.Format(offer.Cloth.Selvedge))
	}
}

// wholeRemnant refuses one that no piece could be laid on.
func (r *resolver) wholeRemnant(path Path, c cloth.Cloth, rest remnant.Offcut) {
	if _, err := remnant.Together(c, []remnant.Offcut{rest}); err != nil {
		r.fault(path, strict.OutOfRange, "%s", err)
	}
}

// handling reads what is said of a cloth beside its size: gap, tilt, sides,
// shrinkage, repeat, rules that pieces keep, and flaws.
func (r *resolver) handling(path Path, name string, c Cloth, out *cloth.Cloth) {
	if c.Gap != "" {
		out.Gap, _ = r.length(path.Key("gap"), name+": the gap between pieces", c.Gap)
	}
	out.Tilt = r.percent(path.Key("tilt"), name+": the tilt", c.Tilt, 5, "1 to 3 % is tolerated on cheap goods")
	out.Alike = r.yes(path.Key("alike_both_sides"), name+": alike_both_sides", c.Alike)
	out.OneWayPieces = texts(c.OneWayPieces)
	out.HandLaying = r.addition(path.Key("hand_laying"), name+": hand_laying", c.HandLaying, cloth.UsualHandLaying)
	out.Shrinkage = r.shrinkage(path, name, c.Fibre, c.Shrinkage)
	if p := c.Repeat; p != nil {
		out.Repeat = r.repeat(path.Key("repeat"), name, *p)
		r.defectsOf(cloth.Cloth{Repeat: out.Repeat, Inches: r.work.InInches()}, path.Key("repeat"), c.Name)
	}
	for _, one := range c.rules() {
		one.read(r.values, path, name, out)
	}
	for i, flaw := range c.Flaws {
		if f, ok := r.flaw(path.Key("flaws").Entry(i), string(c.Name), name, flaw); ok {
			out.Flaws = append(out.Flaws, f)
		}
	}
}

// shrinkage of a cloth or an offer at a path: that which it gives, or that of its
// fibre.
func (r *resolver) shrinkage(path Path, name string, fibre Choice[cloth.Fibre], s *Shrinkage) cloth.Shrinkage {
	const usual = "0 to 8 % is usual"
	of := choose(r.values, path.Key("fibre"), name+": the fibre", fibre)
	if s == nil {
		return of.Shrinkage(false)
	}
	at := path.Key("shrinkage")
	out := cloth.Shrinkage{
		Warp:     r.percent(at.Key("warp"), name+": the shrinkage of the warp", s.Warp, 30, usual),
		Weft:     r.percent(at.Key("weft"), name+": the shrinkage of the weft", s.Weft, 30, usual),
		CutFirst: r.yes(at.Key("cut_first"), name+": cut_first", s.CutFirst),
	}
	if s.Warp == "" && s.Weft == "" && !s.none {
		return of.Shrinkage(out.CutFirst)
	}
	return out
}

func (r *resolver) repeat(path Path, name string, p Repeat) cloth.Repeat {
	if p.Along == "" && p.Across == "" {
		r.fault(path, strict.Missing,
			"%s has a repeat without a length; add along: (stripes across the cloth), across: (stripes along it), or both", name)
	}
	if p.CentreLine == "" && len(p.Centre) > 0 {
		r.fault(path.Key("centre"), strict.Missing,
			"%s: on which line is the centre to lie? Add centre_line: its distance from the edge of the selvedge", name)
	}
	out := cloth.Repeat{
		Along:   r.optional(path.Key("along"), name+": the repeat along", p.Along),
		Across:  r.optional(path.Key("across"), name+": the repeat across", p.Across),
		Matches: marks.All(texts(p.Match)), Centred: texts(p.Centre),
		SideBySide: texts(p.SideBySide), Even: r.yes(path.Key("even"), name+": even", p.Even),
	}
	if p.CentreLine != "" {
		out.CentreLine, _ = r.length(path.Key("centre_line"), name+": the centre line", p.CentreLine)
	}
	return out
}

func (r *resolver) flaw(path Path, of, name string, f Flaw) (cloth.Flaw, bool) {
	what := name + ": flaw " + quoted(f.Name)
	before := len(r.faults.List)
	out := cloth.Flaw{}
	switch {
	case len(f.At) > 0 || f.Radius != "":
		centre := r.point(path.Key("at"), what+": the centre", f.At)
		radius, _ := r.positive(path.Key("radius"), what+": the radius", f.Radius)
		out = cloth.RoundFlaw(string(f.Name), centre, radius)
	case len(f.Outline) > 0:
		for i, corner := range f.Outline {
			out.Outline = append(out.Outline, r.point(path.Key("outline").Entry(i), what+": a corner", corner))
		}
		out.Name = string(f.Name)
	case len(f.Along) > 0 && len(f.Across) > 0:
		x, y := r.span(path.Key("along"), what, f.Along), r.span(path.Key("across"), what, f.Across)
		out = cloth.Flaw{Name: string(f.Name), Outline: orb.Ring{{x[0], y[0]}, {x[1], y[0]}, {x[1], y[1]}, {x[0], y[1]},
			{x[0], y[0]}}}
	case len(f.Along) > 0:
		x := r.span(path.Key("along"), what, f.Along)
		out = cloth.BarFlaw(string(f.Name), x[0], x[1])
	case len(f.Across) > 0:
		y := r.span(path.Key("across"), what, f.Across)
		out = cloth.BandFlaw(string(f.Name), y[0], y[1])
	default:
		r.fault(path, strict.Missing,
			"%s has no place; give at: [along, across] and radius:, or along: [from, to], across: [from, to], or an "+
				"outline:", what)
	}
	if len(r.faults.List) == before {
		r.defectsOf(cloth.Cloth{Flaws: []cloth.Flaw{out}}, path, Text(of))
	}
	return out, len(r.faults.List) == before
}

// defectsOf passes on what the cloth's own check finds in what was read of it, each at the
// key below a path that it is about.
func (r *resolver) defectsOf(c cloth.Cloth, path Path, name Text) {
	c.Name, c.Width = string(name), anyWidth
	for _, f := range c.Faults() {
		at := path
		if key, known := keyOfDefect[f.Of]; known {
			at = path.Key(key)
		}
		r.fault(at, strict.OutOfRange, "%s: %s", c, words.Faulty(c, f))
	}
}

// anyWidth, mm, stands for one that plays no part.
const anyWidth = 1000

// keyOfDefect is the key that is most likely wrong, below that of what was read.
var keyOfDefect = map[cloth.Defect]string{cloth.NoStripes: "centre"}
