package job

import (
	"maps"
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces"
	"ellwand/pieces/language"
)

func (r *resolver) garments(wearers []wearer) {
	above := r.allowances(strict.Top("allowances"), nil, r.file.Allowances)
	for _, garment := range r.file.Garments {
		r.all += worn(garment, wearers)
	}
	seen := map[string]bool{}
	if !r.withinMade(wearers) {
		return
	}
	for i, garment := range r.file.Garments {
		path := strict.Top("garments").Entry(i)
		if garment.Name == "" {
			r.fault(path, strict.Missing, "garment %d has no name; add one, such as: name: blouse",
				"Kleidungsstück %d hat keinen Namen; geben Sie ihm einen, etwa: Bluse", i+1)
			continue
		}
		if seen[Slug(string(garment.Name))] {
			r.fault(path.Key("name"), strict.Twice,
				"two garments are named %s; give each its own name, or one of them a "+
					"quantity",
				"zwei Kleidungsstücke heißen %s; geben Sie jedem einen eigenen Namen, oder einem davon "+
					"eine Anzahl",
				quoted(garment.Name))
		}
		seen[Slug(string(garment.Name))] = true
		r.knownWearers(path, garment, wearers)
		before := len(r.faults.List)
		for _, w := range wearers {
			if r.isEnded() {
				return
			}
			// What is wrong for one wearer is most likely wrong for all.
			if wears(garment, w) && len(r.faults.List) == before {
				r.wearing = w
				if !r.garment(path, garment, above) {
					return
				}
			}
		}
	}
}

// isEnded reports whether drafting was ended, and says how far it had come.
func (r *resolver) isEnded() bool {
	if r.ended == nil && len(r.work.Garments) > 0 && r.file.ctx != nil && r.file.ctx.Err() != nil {
		r.ended = &Ended{File: r.file.name, Drafted: len(r.work.Garments), All: r.all, Cause: r.file.ctx.Err()}
	}
	return r.ended != nil
}

// worn is for how many wearers a garment is made.
func worn(garment Garment, wearers []wearer) int {
	count := 0
	for _, w := range wearers {
		if wears(garment, w) {
			count++
		}
	}
	return count
}

// garment resolves one garment. It returns false when no more may be added.
func (r *resolver) garment(path Path, garment Garment, above allowances) bool {
	before := len(r.faults.List)
	made := Made{Name: string(garment.Name), Kind: string(garment.Name), Wearer: r.wearing.name,
		Quantity: r.count(path.Key("quantity"), language.Say("the quantity", "Anzahl"), garment.Quantity)}
	if made.Wearer != "" {
		made.Name += ", " + made.Wearer
	}
	cloth := r.clothNamed(path.Key("cloth"), language.Say("garment %s", "Kleidungsstück %s",
		quoted(garment.Name)), garment.Cloth, r.firstCloth())
	widths := r.allowances(path.Key("allowances"), above, garment.Allowances)
	request := draft.Request{
		Garment: made.Name, Size: r.wearing.size, Cloth: cloth, Body: r.wearing.body, Table: r.wearing.table,
		Bodice:       r.bodice(path.Key("bodice"), garment.Bodice),
		Sleeve:       r.sleeve(path.Key("sleeve"), garment.Sleeve),
		Skirt:        r.skirt(path.Key("skirt"), garment.Skirt),
		Trousers:     r.trousers(path.Key("trousers"), garment.Trousers),
		StraightCut:  r.straightCut(path.Key("straight_cut"), garment.StraightCut),
		Parts:        r.parts(path.Key("parts"), garment.Parts, cloth),
		Linings:      r.linings(path.Key("linings"), garment.Linings, cloth),
		Interfacings: r.interfacings(path.Key("interfacings"), garment.Interfacings, cloth),
		Allowances:   widths,
	}
	if garment.Pattern == nil { // whose pieces cannot be drafted shorter with the others
		r.lengths(path, made.Kind, &request)
	}
	handmade := r.handmade(path, garment, cloth, widths)
	pattern, seams := r.fromPattern(path, garment, made.Name, cloth, widths)
	made.FromPattern = r.change(path.Key("changes"), garment, pattern, widths)
	if len(r.faults.List) > before {
		return true
	}
	drafted := asksForDraft(request)
	if drafted {
		r.draft(path, &made, request)
	}
	if drafted && len(made.Pieces) == 0 {
		return true
	}
	made.Pieces = r.cutFrom(path.Key("cut_from"), garment, made.Pieces)
	r.inPlace(&made, pattern)
	made.Truing.Rows = append(made.Truing.Rows, SewnRows(seams, "")...)
	made.Pieces = append(made.Pieces, handmade...)
	if len(made.Pieces) == 0 {
		r.fault(path, strict.Missing,
			"garment %s has no pieces; give it a bodice, a skirt, trousers, a straight_cut, parts, pieces or a pattern",
			"Kleidungsstück %s hat keine Schnittteile; geben Sie ihm ein Oberteil, einen Rock, eine "+
				"Hose, einen geraden Schnitt, Zubehörteile, eigene Teile oder einen Schnitt",
			quoted(garment.Name))
	}
	r.uniqueNames(path, garment, made)
	r.work.Garments = append(r.work.Garments, made)
	return r.withinLays(path, made)
}

// asksForDraft says that a request has something to draft.
func asksForDraft(request draft.Request) bool {
	return request.Bodice != nil || request.Sleeve != nil || request.Skirt != nil || request.Trousers != nil ||
		request.StraightCut != nil || len(request.Parts) > 0
}

// draft drafts a garment.
func (r *resolver) draft(path Path, made *Made, request draft.Request) {
	if r.wearing.bodiless {
		return
	}
	if len(r.wearing.body) == 0 && (request.Bodice != nil || request.Skirt != nil || request.Trousers != nil) {
		r.fault(r.wearing.path.Key("body"), strict.Missing,
			"the job has no body to draft from; add body: with its measurements, or size: and table:",
			"der Auftrag hat keinen Körper, nach dem gezeichnet wird; geben Sie Maße an, oder "+
				"Größe und Größentabelle")
		return
	}
	result, err := draft.Draft(request)
	if err != nil {
		r.fault(r.blame(path, r.wearing.path, draft.FaultOf(err)), strict.Undraftable, "garment %q: %s",
			"Kleidungsstück %q: %s", made.Name,
			draft.Said(err, r.work.Unit))
		return
	}
	made.Pieces, made.Truing, made.Figures = result.Pieces, result.Truing, result.Figures
	made.Body, made.Sheets = result.Body, result.Sheets
	for name, value := range result.Body {
		r.wearing.body[name] = value
	}
	made.Derived = r.wearing.derived
	for _, derived := range result.Derived {
		r.wearing.derived[derived.Measurement] = derived.Rule
		r.work.note(language.Say("%sthe %s is not given; %s is used, %s", "%s%s fehlt; genommen wird %s, %s",
			r.wearing.prefix(), derived.Measurement, r.work.Format(derived.Value), derived.Rule.Said(r.work.Unit)))
	}
	for _, warning := range result.Warnings {
		r.work.note(language.Join(": ", language.Name(made.Name), warning.Said(r.work.Unit)))
	}
}

// cutFrom gives each drafted piece the cloths that name it: a piece named by
// two is cut from both, one named by none stays with the garment's cloth.
func (r *resolver) cutFrom(path Path, garment Garment, drafted []pieces.Piece) []pieces.Piece {
	named := map[string][]string{} // cloths by piece
	var known []string
	for _, piece := range drafted {
		known = append(known, piece.Name)
	}
	for _, key := range slices.Sorted(maps.Keys(garment.CutFrom)) {
		cloth := r.clothNamed(path.Key(key), language.Say("cut_from", "zugeschnitten aus"), Text(key), "")
		for i, name := range garment.CutFrom[key] {
			piece, found := strict.KnownAs(string(name), known)
			if !found {
				r.fault(path.Key(key).Entry(i), strict.Unknown, "garment %s has no drafted piece %s; %s",
					"Kleidungsstück %s hat kein gezeichnetes Teil %s; %s", quoted(garment.Name),
					quoted(name), strict.Hint(string(name), known))
				continue
			}
			named[piece] = append(named[piece], cloth)
		}
	}
	var out []pieces.Piece
	for _, piece := range drafted {
		cloths := named[piece.Name]
		if len(cloths) == 0 {
			cloths = []string{piece.Cloth}
		}
		for _, cloth := range cloths {
			piece.Cloth = cloth
			out = append(out, piece)
		}
	}
	return out
}

// uniqueNames refuses two pieces of one name in one cloth: on the plan they
// could not be told apart.
func (r *resolver) uniqueNames(path Path, garment Garment, made Made) {
	seen := map[[2]string]bool{}
	for _, piece := range made.Pieces {
		key := [2]string{Slug(piece.Name), piece.Cloth}
		if seen[key] {
			r.fault(nameOf(path, garment, piece.Name), strict.Twice,
				"garment %q has two pieces named %q; give each its "+
					"own name", "Kleidungsstück %q hat zwei Teile mit dem Namen %q; geben Sie jedem einen eigenen",
				made.Name, piece.Name)
		}
		seen[key] = true
	}
}

// nameOf is the path of the name of the last rectangle or part that is called
// so; of the garment when none is.
func nameOf(path Path, garment Garment, name string) Path {
	for i := len(garment.Pieces) - 1; i >= 0; i-- {
		if Slug(string(garment.Pieces[i].Name)) == Slug(name) {
			return path.Key("pieces").Entry(i).Key("name")
		}
	}
	return path
}

// firstCloth is what pieces are cut from unless they say otherwise.
func (r *resolver) firstCloth() string {
	if len(r.work.Cloths) == 0 {
		return ""
	}
	return r.work.Cloths[0].Cloth.Name
}
