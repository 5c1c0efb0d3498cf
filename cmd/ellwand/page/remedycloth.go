package page

import (
	"slices"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
)

// otherCloths that pieces may be cut from in place of this one: those of the job, or where
// it has none a new one of a name; an empty one where there is none of either.
func (r *remedy) otherCloths(gives []remnant.Given, called string) []string {
	if !slices.ContainsFunc(gives, func(g remnant.Given) bool { return g.Of == remnant.OtherCloth }) {
		return []string{""}
	}
	var out []string
	for i, c := range r.work.Cloths {
		if i != r.cloth {
			out = append(out, c.Cloth.Name)
		}
	}
	if called = strings.TrimSpace(called); len(out) == 0 && called != "" && !r.isHere(called) {
		return []string{called}
	}
	if len(out) == 0 {
		return []string{""}
	}
	return out
}

func (r *remedy) isHere(cloth string) bool {
	return slices.ContainsFunc(r.file.Cloths, func(c job.Cloth) bool {
		return strict.Plain(string(c.Name)) == strict.Plain(cloth)
	})
}

// newWidth of a cloth that the job has not yet: the least that this one has, in which what
// is cut from it will fit.
func (r *remedy) newWidth(cloth string) string {
	widths := r.work.Cloths[r.cloth].Widths
	if cloth == "" || r.isHere(cloth) || len(widths) == 0 {
		return ""
	}
	return r.work.Format(slices.Min(widths))
}

// fromOther cuts a piece from the other cloth; one that is new is added with it.
func (r *remedy) fromOther(garment int, piece pieces.Piece) [][]desk.Action {
	if r.other == "" {
		return nil
	}
	var do []desk.Action
	if width := r.newWidth(r.other); width != "" {
		do = append(do, desk.AppendTo(strict.Top("cloths"), edit.Value{Keys: []edit.Pair{
			{Key: "name", Value: edit.Text(r.other)}, {Key: "width", Value: edit.Text(width)}}}))
	}
	p, at, is := r.own(garment, piece.Name)
	switch {
	case is && len(p.Cut.By) == 0:
		return [][]desk.Action{append(do, setText(at.Key("cloth"), r.other))}
	case is:
		return [][]desk.Action{append(do, recut(p.Cut.By, at.Key("cut"), piece.Cloth, r.other)...)}
	}
	return [][]desk.Action{append(do, r.cutFrom(garment, piece)...)}
}

// recut moves what is cut from one cloth to another.
func recut[Count ~string](by map[string]Count, at strict.Path, from, to string) []desk.Action {
	var out []desk.Action
	for cloth, count := range by {
		if strict.Plain(cloth) == strict.Plain(from) {
			out = append(out, setText(at.Key(to), string(count)), desk.UnsetAt(at.Key(cloth)))
		}
	}
	return out
}

// cutFrom moves a drafted piece in the lists of what is cut from which cloth.
func (r *remedy) cutFrom(garment int, piece pieces.Piece) []desk.Action {
	lists, at := r.file.Garments[garment].CutFrom, garmentAt(garment).Key("cut_from")
	out := []desk.Action{desk.AppendTo(at.Key(r.other), edit.Text(piece.Name))}
	for cloth, names := range lists {
		if strict.Plain(cloth) != strict.Plain(piece.Cloth) {
			continue
		}
		for i, name := range slices.Backward(names) {
			switch {
			case strict.Plain(string(name)) != strict.Plain(piece.Name):
			case len(names) == 1:
				out = append(out, desk.UnsetAt(at.Key(cloth)))
			default:
				out = append(out, desk.UnsetAt(at.Key(cloth).Entry(i)))
			}
		}
	}
	return out
}

// isElsewhere says that the cloth has the pieces no more.
func isElsewhere(_, after []pieces.Piece) bool { return len(after) == 0 }
