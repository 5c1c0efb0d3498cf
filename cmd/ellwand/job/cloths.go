package job

import (
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/fabric/words"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/marks"
	"ellwand/pieces/measure"
	"ellwand/pieces/seams"
)

// usualSelvedge is not cut into, on each side, mm [source.CommonPractice].
const usualSelvedge = 10

// UsualStep is what a shop rounds up to: 10 cm, or 1/8 yd for a job in inches
// [source.CommonPractice].
func UsualStep(unit measure.Unit) float64 {
	if unit == measure.Inch || unit == measure.Yard {
		return 914.4 / 8
	}
	return 100
}

func (r *resolver) cloths() {
	if len(r.file.Cloths) == 0 {
		r.fault(strict.Top("cloths"), strict.Missing,
			"the job has no cloths; add at least one under cloths:, with its "+
				"name and width",
			"der Auftrag hat keinen Stoff; nehmen Sie mindestens einen auf, mit Namen und Breite")
	}
	seen := map[string]bool{}
	for i, c := range r.file.Cloths {
		path := strict.Top("cloths").Entry(i)
		if c.Name == "" {
			r.fault(path, strict.Missing, "cloth %d has no name; add one, such as: name: shell",
				"Stoff %d hat keinen Namen; geben Sie ihm einen, etwa: Oberstoff", i+1)
			continue
		}
		name := string(c.Name)
		if seen[Slug(name)] {
			r.fault(path.Key("name"), strict.Twice, "two cloths are named %q; give each its own name",
				"zwei Stoffe heißen %q; geben Sie jedem einen eigenen Namen", name)
		}
		seen[Slug(name)] = true
		r.work.Cloths = append(r.work.Cloths, r.cloth(path, c))
	}
}

func (r *resolver) cloth(path Path, c Cloth) Goods {
	name := language.Say("cloth %s", "Stoff %s", quoted(c.Name))
	offer := Goods{Cloth: cloth.Cloth{
		Name:         string(c.Name),
		Selvedge:     usualSelvedge,
		Nap:          choose(r.values, path.Key("nap"), name.Its("the nap", "Strich"), c.Nap),
		PurchaseStep: UsualStep(r.work.Unit),
		Inches:       r.work.InInches(),
	}}
	if c.Selvedge != "" {
		offer.Cloth.Selvedge, _ = r.length(path.Key("selvedge"), name.Its("the selvedge", "Webkante"), c.Selvedge)
	}
	if c.Step != "" {
		offer.Cloth.PurchaseStep, _ = r.positive(path.Key("step"), name.Its("the step", "Stufe des Ladens"), c.Step)
	}
	if c.Straighten != "" {
		offer.Cloth.Straighten, offer.Straightened = r.length(path.Key("straighten"),
			name.Its("the straightening", "Begradigen"),
			c.Straighten)
	}
	offer.Measured = r.yes(path.Key("width_measured"), name.Its("width_measured", "Breite gemessen"), c.Measured)
	r.handling(path, name, c, &offer.Cloth)
	if c.Length != "" {
		offer.Length, _ = r.positive(path.Key("length"), name.Its("the length", "Länge"), c.Length)
	}
	switch {
	case len(c.Remnants) > 0:
		r.remnants(path.Key("remnants"), name, c, &offer)
	case c.Width != "" && len(c.Widths) > 0:
		r.fault(path.Key("widths"), strict.Contradiction, "%s has both width and widths; keep one of them",
			"%s hat eine Breite und dazu mehrere; behalten Sie eines von beidem", name)
	case len(c.Widths) > 0:
		for i, width := range c.Widths {
			r.width(&offer, path.Key("widths").Entry(i), name, width)
		}
	case c.Width == "" && len(c.Offers) > 0: // each offer has its own
	default:
		r.width(&offer, path.Key("width"), name, c.Width)
	}
	offer.Cloth.ByHand = r.byHand(path.Key("laid_by_hand"), name, c.ByHand)
	r.offers(path, c, &offer)
	if len(offer.Widths) == 0 {
		offer.Widths = offeredWidths(offer.Offers)
	}
	return offer
}

// emptyCloths refuses a cloth from which nothing is cut: it is a slip in a
// name more often than not.
func (r *resolver) emptyCloths() {
	if len(r.faults.List) > 0 {
		return
	}
	for i, offer := range r.work.Cloths {
		if len(r.work.PiecesOf(offer.Cloth.Name)) == 0 {
			r.fault(strict.Top("cloths").Entry(i), strict.Unused,
				"nothing is cut from cloth %q; name it in a garment's cloth, a piece's cloth or cut_from, or remove it",
				"aus dem Stoff %q wird nichts zugeschnitten; nennen Sie ihn bei einem Kleidungsstück oder "+
					"Teil, oder nehmen Sie ihn weg",
				offer.Cloth.Name)
		}
	}
}

// namedOnCloths refuses pieces and match points that a cloth names and that are
// not cut from it.
func (r *resolver) namedOnCloths() {
	if len(r.faults.List) > 0 {
		return
	}
	for i, offer := range r.work.Cloths {
		path, all := strict.Top("cloths").Entry(i), r.work.PiecesOf(offer.Cloth.Name)
		isPiece := func(name string) bool {
			return slices.ContainsFunc(all, func(p pieces.Piece) bool { return p.Name == name })
		}
		noPiece := func(at Path, name string, task lay.Task) {
			r.fault(at, strict.Unknown, "cloth %s: %s", "Stoff %s: %s", offer.Cloth.Name, words.NoPiece(name, task))
		}
		for k, name := range offer.Cloth.OneWayPieces {
			if !isPiece(name) {
				noPiece(path.Key("one_way_pieces").Entry(k), name, lay.ToGoOneWay)
			}
		}
		for k, name := range offer.Cloth.Repeat.Centred {
			if !isPiece(name) {
				noPiece(path.Key("repeat").Key("centre").Entry(k), name, lay.ToBeCentred)
			}
		}
		for k, name := range offer.Cloth.Repeat.SideBySide {
			if !isPiece(name) {
				noPiece(path.Key("repeat").Key("hang_side_by_side").Entry(k), name, lay.ToHangSideBySide)
			}
		}
		r.matches(path.Key("repeat").Key("match"), &r.work.Cloths[i], all)
	}
}

// matches are the seams and notches that a cloth names, as the pieces have them: "side"
// is the side seam, and any notch that is called so.
func (r *resolver) matches(path Path, offer *Goods, all []pieces.Piece) {
	known := plan.Matchable(offer.Cloth.Repeat, all)
	var found []marks.Name
	for k, asked := range offer.Cloth.Repeat.Matches {
		means := func(name marks.Name) bool {
			words := strict.Plain(asked.String())
			return words == strict.Plain(name.String()) ||
				name.Seam() != seams.None && words == strict.Plain(name.Seam().String())
		}
		before := len(found)
		for _, name := range known {
			if means(name) {
				found = append(found, name)
			}
		}
		if len(found) == before {
			r.fault(path.Entry(k), strict.Unknown, "cloth %s: %s", "Stoff %s: %s", offer.Cloth.Name,
				words.NoMatch(asked.String(), known))
		}
	}
	offer.Cloth.Repeat.Matches = found
	for i := range offer.Offers {
		offer.Offers[i].Cloth.Repeat.Matches = found
	}
}
