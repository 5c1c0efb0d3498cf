package job

import (
	"errors"

	"ellwand/cmd/ellwand/patternfile"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/language"
	piecewords "ellwand/pieces/words"
)

// change pieces of a pattern as the garment says, in place. It returns the names that they
// have in the file by those that they have here.
func (r *resolver) change(path Path, garment Garment, all []pieces.Piece, widths allowances) map[string]string {
	names := map[string]string{}
	for _, p := range all {
		names[p.Name] = p.Name
	}
	if garment.Pattern == nil && len(garment.Changes) > 0 {
		r.fault(path, strict.Contradiction, "garment %s has no pattern whose pieces could be changed; remove changes",
			"%s hat keinen Schnitt, dessen Teile zu ändern wären; nehmen Sie die Änderungen weg", quoted(garment.Name))
		return names
	}
	known := make([]string, 0, len(all))
	for _, p := range all {
		known = append(known, p.Name)
	}
	for i, c := range garment.Changes {
		at := path.Entry(i)
		of, is := strict.KnownAs(string(c.Of), known)
		if !is && len(all) > 0 {
			r.fault(at.Key("of"), strict.Unknown, "the pattern has no piece %s to change; %s",
				"der Schnitt hat kein Teil %s, das zu ändern wäre; %s", quoted(c.Of), strict.Hint(string(c.Of), known))
			continue
		}
		said := r.said(at, c)
		for k := range all {
			if known[k] == of {
				r.changeOne(at, c, said, &all[k], widths)
				names[all[k].Name] = of
			}
		}
	}
	return names
}

// what it is that is changed.
func (c Change) what() language.Sentence { return language.Say("piece %s", "Teil %s", quoted(c.Of)) }

// said is what a change says of any piece.
func (r *resolver) said(at Path, c Change) found.Said {
	what := c.what()
	out := found.Said{Name: string(c.Name),
		Fold:  choose(r.values, at.Key("fold"), what.Its("the fold", "Stoffbruch"), c.Fold),
		Grain: choose(r.values, at.Key("grain"), what.Its("the grain", "Fadenlauf"), c.Grain)}
	if c.Cut != "" {
		out.Cut = r.count(at.Key("cut"), what.Its("cut", "Wie oft zugeschnitten"), c.Cut)
	}
	if c.Pair != "" {
		out.Pair = found.No
		if r.values.Yes(at.Key("pair"), what.Its("pair", "Paar"), c.Pair) {
			out.Pair = found.Yes
		}
	}
	return out
}

// changeOne piece.
func (r *resolver) changeOne(at Path, c Change, said found.Said, p *pieces.Piece, widths allowances) {
	what := c.what()
	m := patternfile.Maker{Values: r.values.Values, Say: r.work.Format, Usual: widths.usual, Every: widths.seams()}
	changed, _, err := found.Change(*p, said)
	var none *found.NoFoldThere
	var off *found.OffWarp
	switch {
	case errors.As(err, &none):
		r.fault(at.Key("fold"), strict.Contradiction, "%s has no straight edge on that side to lie on the fold; choose "+
			"another side, or none", "%s hat auf dieser Seite keine gerade Kante, die im Stoffbruch liegen könnte; wählen Sie "+
			"eine andere, oder keine", what)
		return
	case errors.As(err, &off):
		r.fault(at.Key("fold"), strict.Contradiction, "%s: what lies on the fold runs along the warp, and that side does not; "+
			"choose another side, or change its grain", "%s: was im Stoffbruch liegt, läuft längs der Kette, und diese Seite "+
			"nicht; wählen Sie eine andere, oder ändern Sie den Fadenlauf", what)
		return
	case said.Pair == found.Yes && changed.Cut%2 != 0:
		r.fault(at.Key("pair"), strict.Contradiction, "%s is a pair, but %d are cut; a pair needs an even number: cut: %d",
			"%s ist ein Paar, aber %d werden zugeschnitten; ein Paar braucht eine gerade Zahl: %d", what, changed.Cut,
			changed.Cut+1)
		return
	case said.Pair == found.Yes && said.Fold > found.NoFold:
		r.fault(at.Key("fold"), strict.Contradiction, "%s cannot be a pair and lie on the fold: a folded piece is cut whole; "+
			"remove pair", "%s kann kein Paar sein und im Stoffbruch liegen: im Bruch wird es ganz zugeschnitten; nehmen Sie "+
			"das Paar weg", what)
		return
	case err != nil:
		r.Note(at, strict.Malformed, language.OfError(piecewords.Refused(err)))
		return
	}
	*p = changed
	for i := range p.Edges {
		e := &p.Edges[i]
		if c.Allowance == "" || e.Name == p.Fold {
			continue
		}
		e.Allowance, e.Included, e.Unknown = 0, 0, false
		if !m.AllowEdge(at.Key("allowance"), what, c.Allowance, e) {
			return
		}
	}
}
