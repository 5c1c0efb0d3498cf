package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/draft/lining"
	"ellwand/pieces/language"
)

// usualShorter is how much shorter than the shell a lining ends, mm
// ([source.CommonPractice]: 1.5 to 2.5 cm).
const usualShorter = 20

func (r *resolver) linings(path Path, asked []Lining, cloth string) []draft.Lining {
	var out []draft.Lining
	for i, l := range asked {
		inner := path.Entry(i)
		made := draft.Lining{
			Of:    r.of(inner, language.Say("lining", "Futter"), l.Of),
			Cloth: r.clothNamed(inner.Key("cloth"), language.Say("lining", "Futter"), l.Cloth, cloth),
			Options: lining.Options{
				Shorter: usualShorter,
				BackPleat: r.optional(inner.Key("back_pleat"), language.Say("the back pleat of the lining",
					"Rückenfalte des Futters"), l.BackPleat),
			},
		}
		if l.Shorter != "" {
			made.Shorter, _ = r.length(inner.Key("shorter"), language.Say("how much shorter the lining is",
				"wie viel kürzer das Futter ist"), l.Shorter)
		}
		out = append(out, made)
	}
	return out
}

func (r *resolver) interfacings(path Path, asked []Interfacing, cloth string) []draft.Interfacing {
	var out []draft.Interfacing
	for i, f := range asked {
		inner := path.Entry(i)
		made := draft.Interfacing{
			Of:    r.of(inner, language.Say("interfacing", "Einlage"), f.Of),
			Cloth: r.clothNamed(inner.Key("cloth"), language.Say("interfacing", "Einlage"), f.Cloth, cloth),
			Interfacing: lining.Interfacing{Cut: r.optionalCount(inner.Key("cut"), language.Say("interfacing: cut",
				"Einlage: wie oft zugeschnitten"), f.Cut)},
		}
		if f.Reduce != "" {
			if by, ok := r.length(inner.Key("reduce"),
				language.Say("what the allowances of the interfacing are reduced by",
					"worum die Nahtzugaben der Einlage schmaler sind"), f.Reduce); ok {
				made.Reduce = &by
			}
		}
		out = append(out, made)
	}
	return out
}

// of reads the pieces that a lining or interfacing is derived from.
func (r *resolver) of(path Path, what language.Sentence, names []Text) []string {
	if len(names) == 0 {
		r.fault(path, strict.Missing, "the %s does not say what it is of; add: of: [front bodice, back bodice]",
			"%s: es fehlt, von welchen Teilen; etwa: Vorderteil, Rückenteil", what)
	}
	out := make([]string, len(names))
	for i, name := range names {
		out[i] = string(name)
	}
	return out
}
