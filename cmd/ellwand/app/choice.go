package app

import (
	"slices"

	"ellwand/cmd/ellwand/job"
	"ellwand/pieces"
)

// Choice is which pieces are drawn, by their names and by the cloths that they are cut
// from; all of them where it names none.
type Choice struct{ Pieces, Cloths []string }

// has reports whether a piece is chosen.
func (c Choice) has(p pieces.Piece) bool {
	return isNamedIn(c.Pieces, p.Name) && isNamedIn(c.Cloths, p.Cloth)
}

func isNamedIn(names []string, name string) bool {
	is := func(other string) bool { return job.Slug(other) == job.Slug(name) }
	return len(names) == 0 || slices.ContainsFunc(names, is)
}

// of some pieces, those that are chosen.
func (c Choice) of(all []pieces.Piece) []pieces.Piece {
	return slices.DeleteFunc(slices.Clone(all), func(p pieces.Piece) bool { return !c.has(p) })
}

// check that the choice names nothing that there is not, and leaves something.
func (c Choice) check(all Collection) error {
	if _, err := all.Named(c.Pieces); err != nil {
		return err
	}
	var cloths []string
	for _, p := range all.Pieces {
		if !slices.Contains(cloths, p.Cloth) {
			cloths = append(cloths, p.Cloth)
		}
	}
	for _, name := range c.Cloths {
		if !slices.ContainsFunc(cloths, func(cloth string) bool { return isNamedIn([]string{name}, cloth) }) {
			return noSuchCloth(name, cloths)
		}
	}
	if len(c.of(all.Pieces)) == 0 {
		return refuse("none of the pieces of %s is cut from the cloths of %s", ArgumentPiece, ArgumentCloth)
	}
	return nil
}

// Only keeps the pieces that are chosen.
func (c Collection) Only(choice Choice) (Collection, error) {
	if err := choice.check(c); err != nil {
		return c, err
	}
	c.Pieces = choice.of(c.Pieces)
	return c, nil
}

// Only keeps the pieces that are chosen, in every size.
func (d Drafted) Only(choice Choice) (Drafted, error) {
	if err := choice.check(d.Collection()); err != nil {
		return d, err
	}
	out := Drafted{InSizes: d.InSizes}
	for _, work := range d.Works {
		chosen := *work
		chosen.Garments = slices.Clone(work.Garments)
		for i := range chosen.Garments {
			chosen.Garments[i].Pieces = choice.of(chosen.Garments[i].Pieces)
		}
		out.Works = append(out.Works, &chosen)
	}
	return out, nil
}

// Collection of the pieces in all sizes.
func (d Drafted) Collection() Collection {
	out := collectionOf(d.First())
	for _, work := range d.Works[1:] {
		for _, made := range work.Garments {
			out.Pieces = append(out.Pieces, made.Pieces...)
		}
	}
	return out
}
