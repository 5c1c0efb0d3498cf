package draft

import (
	"slices"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/draft/trousers"
	"ellwand/pieces/language"
)

// Draft drafts the pieces of one garment. The error is a sentence that names
// the measurement or option which cannot be.
func Draft(request Request) (Result, error) {
	if err := request.check(); err != nil {
		return Result{}, err
	}
	body, derived, err := request.complete()
	if err != nil {
		return Result{}, err
	}
	g := garment{Request: request, result: Result{Body: body, Derived: derived}}
	if err := g.draft(); err != nil {
		return Result{}, err
	}
	if err := g.line(); err != nil {
		return Result{}, err
	}
	g.finish()
	if err := g.stiffen(); err != nil {
		return Result{}, err
	}
	if err := g.checkNames(); err != nil {
		return Result{}, err
	}
	return g.result, nil
}

func (r Request) check() error {
	switch {
	case r.Bodice == nil && r.Sleeve == nil && r.Skirt == nil && r.Trousers == nil && r.StraightCut == nil &&
		len(r.Parts) == 0:
		return language.Refuse("the garment asks for no pieces: ask for a bodice, a skirt, trousers, a straight cut or parts",
			"das Kleidungsstück hat keine Teile: verlangen Sie ein Oberteil, einen Rock, eine Hose, "+
				"einen geraden Schnitt oder Zubehörteile")
	case r.Skirt != nil && r.Trousers != nil:
		return at(TrousersSection, construct.Refuse("one garment has a skirt or trousers, not both: make two "+
			"garments of them", "ein Kleidungsstück hat Rock oder Hose, nicht beides: machen Sie zwei daraus"))
	case r.Bodice != nil && r.Bodice.BelowWaist > 0 && (r.Skirt != nil || r.Trousers != nil):
		return at(BodiceSection,
			construct.About(subject.BelowWaist).Refuse("the bodice goes on below the waist, so there is no waist seam "+
				"for a skirt or trousers: leave out its length below the waist, or make two garments of them",
				"das Oberteil geht unter der Taille weiter, also fehlt die Taillennaht für Rock oder "+
					"Hose: lassen Sie die Länge unter der Taille weg, oder machen Sie zwei Kleidungsstücke "+
					"daraus"))
	case r.Sleeve != nil && r.Bodice == nil:
		return at(SleeveSection, construct.Refuse("sleeve: it is drafted to the armholes of a bodice: ask for a "+
			"bodice too",
			"Ärmel: er wird zum Armloch eines Oberteils gezeichnet: verlangen Sie auch ein Oberteil"))
	case r.Trousers != nil && r.Trousers.Opening == trousers.ElasticWaist && r.hasWaistband():
		return at(TrousersSection,
			construct.About(subject.Opening).Refuse("trousers: an elastic waist has its casing cut on: leave out the "+
				"waistband, or the elastic waist",
				"Hose: beim Gummizug ist der Tunnel angeschnitten: lassen Sie den Bund weg, oder den "+
					"Gummizug"))
	}
	if r.Table != "" && !slices.Contains(tableNames, r.Table) {
		return unknownTable(r.Table)
	}
	if err := checkAllowances(r.Allowances); err != nil {
		return err
	}
	return r.Body.Check()
}

func (g *garment) draft() error {
	if g.Bodice != nil {
		if err := g.draftBodice(); err != nil {
			return at(BodiceSection, err)
		}
		g.add(g.bodice.Pieces...)
		g.result.Sheets = append(g.result.Sheets, g.bodice.Sheets...)
	}
	if g.Sleeve != nil {
		g.add(g.sleeve.Pieces...)
		g.result.Sheets = append(g.result.Sheets, g.sleeve.Sheet)
	}
	if g.Skirt != nil {
		if err := g.draftSkirt(); err != nil {
			return at(SkirtSection, err)
		}
	}
	if g.Trousers != nil {
		if err := g.draftTrousers(); err != nil {
			return at(TrousersSection, err)
		}
	}
	if g.StraightCut != nil {
		if err := g.draftStraightCut(); err != nil {
			return at(StraightCutSection, err)
		}
	}
	for i, options := range g.Parts {
		if err := g.draftPart(options); err != nil {
			return atEntry(Entry{Section: PartsSection, Index: i}, err)
		}
	}
	return nil
}

// checkNames refuses two pieces of one name, and a cloth for a piece that is
// not there.
func (g *garment) checkNames() error {
	var names []string
	for _, p := range g.result.Pieces {
		if slices.Contains(names, p.Name) {
			return g.atName(p.Name,
				construct.About(subject.Name).Refuse("two pieces are called %q; give one of them another name",
					"zwei Teile heißen %q; geben Sie einem davon einen anderen Namen", p.Name))
		}
		names = append(names, p.Name)
	}
	for name := range g.Cloths {
		if !slices.Contains(names, name) {
			return language.Refuse("a cloth is named for %q, but the pieces are %s",
				"für %q ist ein Stoff genannt, aber die Teile heißen %s", name, joined(names))
		}
	}
	return nil
}

// atName says that an error arose at the last part that is given a name; at the
// whole request when none is.
func (g *garment) atName(name string, err error) error {
	for i := len(g.Parts) - 1; i >= 0; i-- {
		if g.Parts[i].Name == name {
			return atEntry(Entry{Section: PartsSection, Index: i}, err)
		}
	}
	return err
}

// finish puts the garment's name, cloth and allowances on the pieces, and
// reports.
func (g *garment) finish() {
	for i, p := range g.result.Pieces {
		p.Garment, p.Size = g.Garment, g.Size
		if p.Cloth == "" {
			p.Cloth = g.Cloth
		}
		if cloth, ok := g.Cloths[p.Name]; ok {
			p.Cloth = cloth
		}
		g.result.Pieces[i] = allow(p, g.Allowances)
	}
	g.result.Truing = g.report()
	g.result.Figures = g.figures()
	g.warn()
}
