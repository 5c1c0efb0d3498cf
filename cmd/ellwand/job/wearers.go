package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/pieces/safety"
)

// wearers of the job: those it lists, or the one body at its top.
func (r *resolver) wearers() []wearer {
	if len(r.file.Wearers) == 0 {
		return []wearer{r.bodyOf(Path{}, r.file.Size, r.file.Table, r.file.Body)}
	}
	if r.file.Size != "" || r.file.Table != "" || len(r.file.Body) > 0 {
		r.fault(strict.Top("wearers"), strict.Contradiction,
			"the job has wearers and a body of its own at the top; give each wearer a size or a body, and remove the one "+
				"at the top",
			"der Auftrag ist für mehrere Personen und hat dazu eigene Maße; geben Sie jeder Person "+
				"Größe oder Maße, und nehmen Sie die des Auftrags weg")
	}
	var out []wearer
	seen := map[string]bool{}
	for i, w := range r.file.Wearers {
		path := strict.Top("wearers").Entry(i)
		if w.Name == "" {
			r.fault(path, strict.Missing, "wearer %d has no name; add one, such as: name: Imke",
				"Person %d hat keinen Namen; geben Sie ihr einen, etwa: Imke", i+1)
			continue
		}
		if seen[Slug(string(w.Name))] {
			r.fault(path.Key("name"), strict.Twice, "two wearers are named %s; give each her own name",
				"zwei Personen heißen %s; geben Sie jeder einen eigenen Namen", quoted(w.Name))
		}
		seen[Slug(string(w.Name))] = true
		out = append(out, r.bodyOf(path, w.Size, w.Table, w.Body))
		out[len(out)-1].name = string(w.Name)
	}
	return out
}

// bodyOf makes one body from a size and its measurements.
func (r *resolver) bodyOf(path Path, size, table Text, measured Body) wearer {
	before := len(r.faults.List)
	out := wearer{path: path, size: string(size), table: string(table), derived: Derived{}}
	out.body = r.sized(path, r.tableSize(size), string(table), len(measured) > 0).With(r.measured(path, measured))
	r.work.Youngest = max(r.work.Youngest, agedBy(table, out.body))
	if len(r.faults.List) == before {
		if err := out.body.Check(); err != nil {
			r.Note(r.blame(path, path, draft.FaultOf(err)), strict.OutOfRange, draft.Said(err, r.work.Unit))
		}
	}
	out.bodiless = len(r.faults.List) > before
	return out
}

// agedBy says whether the size table of a wearer, or her measurements, are a
// child's.
func agedBy(table Text, body draft.Body) safety.Wearer {
	switch {
	case table == "children":
		return safety.Child
	case body.IsChildSized():
		return safety.PerhapsChild
	}
	return safety.Adult
}

// tableSize is a size of a size table; empty where it is one of a pattern, since
// nothing is drafted.
func (r *resolver) tableSize(size Text) string {
	if !r.file.isDrafted() && len(r.file.patternSizes()) > 0 {
		return ""
	}
	return string(size)
}

// wears reports whether a garment is made for a wearer.
func wears(garment Garment, w wearer) bool {
	if len(garment.For) == 0 {
		return true
	}
	for _, name := range garment.For {
		if strict.Plain(string(name)) == strict.Plain(w.name) {
			return true
		}
	}
	return false
}

// knownWearers refuses a garment for somebody whom the job does not list.
func (r *resolver) knownWearers(path Path, garment Garment, all []wearer) {
	var names []string
	for _, w := range all {
		if w.name != "" {
			names = append(names, w.name)
		}
	}
	for i, name := range garment.For {
		if _, found := strict.KnownAs(string(name), names); !found && len(names) == 0 {
			r.fault(path.Key("for").Entry(i), strict.Unknown,
				"garment %s is for %s, but the job has no wearers; list them at the top under wearers:",
				"Kleidungsstück %s ist für %s, aber der Auftrag nennt keine Personen; nehmen Sie sie auf",
				quoted(garment.Name),
				quoted(name))
		} else if !found {
			r.fault(path.Key("for").Entry(i), strict.Unknown, "garment %s is for %s, who is not under wearers:; %s",
				"Kleidungsstück %s ist für %s, und so heißt keine Person des Auftrags; %s",
				quoted(garment.Name), quoted(name), strict.Hint(string(name), names))
		}
	}
}

// prefix begins a note that concerns one of several wearers.
func (w wearer) prefix() string {
	if w.name == "" {
		return ""
	}
	return w.name + ": "
}
