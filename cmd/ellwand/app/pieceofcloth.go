package app

import (
	"fmt"
	"slices"
	"strings"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/remnant"
)

// PieceOfCloth is a cloth that is there already, or several remnants of it that
// are asked about together.
type PieceOfCloth struct {
	Cloth  cloth.Cloth
	Length float64
	// Offcuts are the remnants, and Row where each lies in the row that they are
	// laid on as; both empty for a single one.
	Offcuts []remnant.Offcut
	Row     []lay.OffcutPlace
	// OnThread is the same cloth with nothing taken off for straightening its
	// ends, where the job does not say what that takes and the least that is
	// usual is taken off; nil where it does.
	OnThread *PieceOfCloth
	// Closely is the same cloth with nothing taken off for hand laying, and Exact
	// that with nothing for its ends either and as little shrinkage as its fibre may
	// have, on which a no is proven; nil where they are no other cloth.
	Closely, Exact *PieceOfCloth
}

// RemnantQuestion says which cloth is asked about. What is empty or 0 is as the
// job has it.
type RemnantQuestion struct {
	Cloth         string
	Length, Width float64
}

// PiecesOfCloth says which pieces of cloth are asked about.
func PiecesOfCloth(work *job.Work, q RemnantQuestion) ([]PieceOfCloth, error) {
	asked, err := q.goods(work)
	if err != nil {
		return nil, err
	}
	var out []PieceOfCloth
	for _, goods := range asked {
		one, err := q.straightened(work, goods)
		if err != nil {
			return nil, err
		}
		out = append(out, one)
	}
	return out, nil
}

// goods are the cloths of the job that are asked about.
func (q RemnantQuestion) goods(work *job.Work) ([]job.Goods, error) {
	var names []string
	var out []job.Goods
	for _, goods := range work.Cloths {
		names = append(names, goods.Cloth.Name)
		if q.Cloth == "" || job.Slug(goods.Cloth.Name) == job.Slug(q.Cloth) {
			out = append(out, goods)
		}
	}
	if len(out) == 0 {
		return nil, refuse("%s %q: the job has no such cloth; it has %s", ArgumentCloth, q.Cloth,
			strings.Join(names, " and "))
	}
	if len(out) == 1 {
		return out, nil
	}
	if q.sized() {
		return nil, tooMany(names)
	}
	out = slices.DeleteFunc(out, func(goods job.Goods) bool { return goods.Length == 0 && len(goods.Remnants) == 0 })
	if len(out) == 0 {
		return nil, refuseAt(work.AtCloth(names[0]), "no cloth has a length; add length: to the cloth that is there "+
			"already, "+
			"or ask with %s %s %s 1.6m", ArgumentCloth, names[0], ArgumentLength)
	}
	return out, nil
}

// tooMany cloths to know which one is meant.
func tooMany(names []string) error {
	format, args := "the job has %d cloths; say which one the piece is of: ", []any{len(names)}
	for i, name := range names {
		if i > 0 {
			format += " or "
		}
		format, args = format+"%s %s", append(args, ArgumentCloth, name)
	}
	return refuse(format, args...)
}

// sized says that the question gives a size of its own.
func (q RemnantQuestion) sized() bool { return q.Length > 0 || q.Width > 0 }

// straightened is the piece of cloth that is asked about. What is there already
// was most likely torn or cut askew: where the job does not say what
// straightening it takes, it takes the least that is usual, so that a yes holds.
// For the same reason what hand laying takes is left over.
func (q RemnantQuestion) straightened(work *job.Work, goods job.Goods) (PieceOfCloth, error) {
	straight := func(c *cloth.Cloth) { c.Straighten = 0 }
	askew := func(c *cloth.Cloth) { c.Straighten = plan.LeastStraightening }
	if goods.Straightened {
		straight, askew = func(*cloth.Cloth) {}, func(*cloth.Cloth) {}
	}
	closely := func(c *cloth.Cloth) { c.HandLaying = cloth.Addition{} }
	least := func(c *cloth.Cloth) { c.Shrinkage = c.Shrinkage.Least() }
	exact := changed(goods, straight, closely, least)
	out, err := q.pieceOf(work, changed(goods, askew))
	if err != nil { // there is less of it than that
		return q.pieceOf(work, exact)
	}
	if out.OnThread, err = q.otherThan(out, work, changed(goods, straight)); err != nil {
		return out, err
	}
	if out.Closely, err = q.otherThan(out, work, changed(goods, askew, closely)); err != nil {
		return out, err
	}
	out.Exact, err = q.otherThan(out, work, exact)
	return out, err
}

// changed are goods with something changed about the cloth, wherever it
// is sold.
func changed(goods job.Goods, changes ...func(*cloth.Cloth)) job.Goods {
	goods.Offers = slices.Clone(goods.Offers)
	for _, change := range changes {
		change(&goods.Cloth)
		for i := range goods.Offers {
			change(&goods.Offers[i].Cloth)
		}
	}
	return goods
}

// otherThan is a piece of cloth as the job has it; nil where it is the same.
func (q RemnantQuestion) otherThan(piece PieceOfCloth, work *job.Work, goods job.Goods) (*PieceOfCloth, error) {
	out, err := q.pieceOf(work, goods)
	if err != nil {
		return nil, err
	}
	a, b := out.Cloth, piece.Cloth
	if out.Length == piece.Length && a.Straighten == b.Straighten && a.HandLaying == b.HandLaying &&
		a.Shrinkage == b.Shrinkage {
		return nil, nil
	}
	return &out, nil
}

func (q RemnantQuestion) pieceOf(work *job.Work, goods job.Goods) (PieceOfCloth, error) {
	name := goods.Cloth.Name
	if len(goods.Remnants) > 0 && !q.sized() {
		together, err := remnant.Together(goods.Cloth, goods.Remnants)
		if err != nil {
			return PieceOfCloth{}, fmt.Errorf("%s: %w", work.AtCloth(name), err)
		}
		return PieceOfCloth{Cloth: together.Cloth, Length: together.Length, Offcuts: goods.Remnants,
			Row: together.Offcuts}, nil
	}
	length, width := q.Length, q.Width
	if length == 0 {
		length = goods.Length
	}
	switch {
	case length == 0:
		return PieceOfCloth{}, refuseAt(work.AtCloth(name), "the length of cloth %q is not known; add length: to it, "+
			"or ask with %s 1.6m", name, ArgumentLength)
	case width == 0 && len(goods.Widths) > 1:
		return PieceOfCloth{}, refuseAt(work.AtCloth(name), "cloth %q has %d widths; say which one the piece has: %s %s",
			name, len(goods.Widths), ArgumentWidth, strings.ReplaceAll(work.Format(goods.Widths[0]), " ", ""))
	case width == 0:
		width = goods.Widths[0]
	}
	cloths, err := clothIn(work, goods, []float64{width})
	if err != nil {
		return PieceOfCloth{}, err
	}
	return PieceOfCloth{Cloth: cloths[0], Length: length}, nil
}
