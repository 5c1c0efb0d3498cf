package job

import (
	"github.com/paulmach/orb"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/remnant"
	"ellwand/fabric/words"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
)

// remnants reads the pieces of a cloth that are there already; the widest of
// them is the width of the cloth.
func (r *resolver) remnants(path Path, name language.Sentence, c Cloth, offer *Goods) {
	if c.Width != "" || len(c.Widths) > 0 || c.Length != "" {
		r.fault(path, strict.Contradiction,
			"%s has remnants and a width or length of its own; leave those out, each remnant has its own",
			"%s hat Reste und dazu eine eigene Breite oder Länge; lassen Sie diese weg, jeder Rest "+
				"hat seine eigenen", name)
	}
	widest := 0.0
	for i, rest := range c.Remnants {
		at := path.Entry(i)
		what := name.Its("remnant %s", "Rest %s", quoted(rest.Name))
		if rest.Name == "" {
			what = name.Its("remnant %d", "Rest %d", i+1)
		}
		out, before := remnant.Offcut{Name: string(rest.Name)}, len(r.faults.List)
		isRectangle := len(rest.Outline) == 0
		switch {
		case isRectangle:
			out.Length, _ = r.positive(at.Key("length"), what.Its("the length", "Länge"), rest.Length)
			out.Width, _ = r.positive(at.Key("width"), what.Its("the width", "Breite"), rest.Width)
			widest = max(widest, out.Width)
		case rest.Length != "" || rest.Width != "":
			r.fault(at.Key("outline"), strict.Contradiction,
				"%s has an outline and a length or width; keep one of them",
				"%s hat einen Umriss und dazu eine Länge oder Breite; behalten Sie eines von beidem", what)
		}
		for k, corner := range rest.Outline {
			p := r.point(at.Key("outline").Entry(k), what.Its("a corner", "eine Ecke"), corner)
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
		r.fault(path, strict.OutOfRange,
			"%s: no remnant is wider than two selvedges of %s; give its width from edge to edge",
			"%s: kein Rest ist breiter als zwei Webkanten von %s; geben Sie seine Breite von Kante zu "+
				"Kante an",
			name, r.work.Format(offer.Cloth.Selvedge))
	}
}

// wholeRemnant refuses one that no piece could be laid on.
func (r *resolver) wholeRemnant(path Path, c cloth.Cloth, rest remnant.Offcut) {
	if _, err := remnant.Together(c, []remnant.Offcut{rest}); err != nil {
		r.Note(path, strict.OutOfRange, language.OfError(err))
	}
}

// handling reads what is said of a cloth beside its size: gap, tilt, sides,
// shrinkage, repeat, rules that pieces keep, and flaws.
func (r *resolver) handling(path Path, name language.Sentence, c Cloth, out *cloth.Cloth) {
	if c.Gap != "" {
		out.Gap, _ = r.length(path.Key("gap"), name.Its("the gap between pieces", "Abstand zwischen Teilen"), c.Gap)
	}
	out.Tilt = r.percent(path.Key("tilt"), name.Its("the tilt", "Schieflage"), c.Tilt, 5,
		language.Say("1 to 3 %% is tolerated on cheap goods",
			"bei billiger Ware gehen 1 bis 3 %%"))
	out.Alike = r.yes(path.Key("alike_both_sides"), name.Its("alike_both_sides", "Beide Seiten gleich"), c.Alike)
	out.OneWayPieces = texts(c.OneWayPieces)
	out.HandLaying = r.addition(path.Key("hand_laying"), name.Its("hand_laying", "Zuschlag für das Auflegen"),
		c.HandLaying, cloth.UsualHandLaying)
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
func (r *resolver) shrinkage(path Path, name language.Sentence, fibre Choice[cloth.Fibre],
	s *Shrinkage) cloth.Shrinkage {
	usual := language.Say("0 to 8 %% is usual", "üblich sind 0 bis 8 %%")
	of := choose(r.values, path.Key("fibre"), name.Its("the fibre", "Faser"), fibre)
	if s == nil {
		return of.Shrinkage(false)
	}
	at := path.Key("shrinkage")
	out := cloth.Shrinkage{
		Warp: r.percent(at.Key("warp"), name.Its("the shrinkage of the warp", "Einlaufen längs"), s.Warp, 30,
			usual),
		Weft: r.percent(at.Key("weft"), name.Its("the shrinkage of the weft", "Einlaufen quer"), s.Weft, 30,
			usual),
		CutFirst: r.yes(at.Key("cut_first"), name.Its("cut_first", "Vor dem Waschen zugeschnitten"), s.CutFirst),
	}
	if s.Warp == "" && s.Weft == "" && !s.none {
		return of.Shrinkage(out.CutFirst)
	}
	return out
}

func (r *resolver) repeat(path Path, name language.Sentence, p Repeat) cloth.Repeat {
	if p.Along == "" && p.Across == "" {
		r.fault(path, strict.Missing,
			"%s has a repeat without a length; add along: (stripes across the cloth), across: (stripes along it), or both",
			"%s hat einen Rapport ohne Länge; geben Sie ihn längs an (Querstreifen), quer "+
				"(Längsstreifen) oder beides", name)
	}
	if p.CentreLine == "" && len(p.Centre) > 0 {
		r.fault(path.Key("centre"), strict.Missing,
			"%s: on which line is the centre to lie? Add centre_line: its distance from the edge of the selvedge",
			"%s: auf welcher Linie soll die Mitte liegen? Geben Sie deren Abstand von der Webkante an",
			name)
	}
	out := cloth.Repeat{
		Along:   r.optional(path.Key("along"), name.Its("the repeat along", "Rapport längs"), p.Along),
		Across:  r.optional(path.Key("across"), name.Its("the repeat across", "Rapport quer"), p.Across),
		Matches: marks.All(texts(p.Match)), Centred: texts(p.Centre),
		SideBySide: texts(p.SideBySide), Even: r.yes(path.Key("even"), name.Its("even",
			"Muster auch umgedreht gleich"), p.Even),
	}
	if p.CentreLine != "" {
		out.CentreLine, _ = r.length(path.Key("centre_line"), name.Its("the centre line", "Mittellinie"),
			p.CentreLine)
	}
	return out
}

func (r *resolver) flaw(path Path, of string, name language.Sentence, f Flaw) (cloth.Flaw, bool) {
	what := name.Its("flaw %s", "Fehler %s", quoted(f.Name))
	before := len(r.faults.List)
	out := cloth.Flaw{}
	switch {
	case len(f.At) > 0 || f.Radius != "":
		centre := r.point(path.Key("at"), what.Its("the centre", "Mitte"), f.At)
		radius, _ := r.positive(path.Key("radius"), what.Its("the radius", "Halbmesser"), f.Radius)
		out = cloth.RoundFlaw(string(f.Name), centre, radius)
	case len(f.Outline) > 0:
		for i, corner := range f.Outline {
			out.Outline = append(out.Outline, r.point(path.Key("outline").Entry(i), what.Its("a corner",
				"eine Ecke"), corner))
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
				"outline:",
			"%s hat keinen Platz; geben Sie Mitte und Halbmesser an, oder von wo bis wo längs und "+
				"quer, oder einen Umriss", what)
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
		r.fault(at, strict.OutOfRange, "%s: %s", "%s: %s", c, words.Faulty(c, f))
	}
}

// anyWidth, mm, stands for one that plays no part.
const anyWidth = 1000

// keyOfDefect is the key that is most likely wrong, below that of what was read.
var keyOfDefect = map[cloth.Defect]string{cloth.NoStripes: "centre"}
