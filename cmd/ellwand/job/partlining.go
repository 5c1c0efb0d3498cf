package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/draft/lining"
)

// usualShorter is how much shorter than the shell a lining ends, mm
// ([source.CommonPractice]: 1.5 to 2.5 cm).
const usualShorter = 20

func (r *resolver) linings(path Path, asked []Lining, cloth string) []draft.Lining {
	var out []draft.Lining
	for i, l := range asked {
		inner := path.Entry(i)
		made := draft.Lining{
			Of:    r.of(inner, "lining", l.Of),
			Cloth: r.clothNamed(inner.Key("cloth"), "lining", l.Cloth, cloth),
			Options: lining.Options{
				Shorter:   usualShorter,
				BackPleat: r.optional(inner.Key("back_pleat"), "the back pleat of the lining", l.BackPleat),
			},
		}
		if l.Shorter != "" {
			made.Shorter, _ = r.length(inner.Key("shorter"), "how much shorter the lining is", l.Shorter)
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
			Of:          r.of(inner, "interfacing", f.Of),
			Cloth:       r.clothNamed(inner.Key("cloth"), "interfacing", f.Cloth, cloth),
			Interfacing: lining.Interfacing{Cut: r.optionalCount(inner.Key("cut"), "interfacing: cut", f.Cut)},
		}
		if f.Reduce != "" {
			if by, ok := r.length(inner.Key("reduce"), "what the allowances of the interfacing are reduced by", f.Reduce); ok {
				made.Reduce = &by
			}
		}
		out = append(out, made)
	}
	return out
}

// of reads the pieces that a lining or interfacing is derived from.
func (r *resolver) of(path Path, what string, names []Text) []string {
	if len(names) == 0 {
		r.fault(path, strict.Missing, "the %s does not say what it is of; add: of: [front bodice, back bodice]", what)
	}
	out := make([]string, len(names))
	for i, name := range names {
		out[i] = string(name)
	}
	return out
}
