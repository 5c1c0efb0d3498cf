package job

import (
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/measure"
)

func (f *File) resolve(shorter shortening) (*Work, error) {
	r := newResolver(f)
	r.shorter = shorter
	r.work.File, r.work.file = f.name, f
	r.work.Name, r.work.Client, r.work.Size = string(f.Job), string(f.Client), string(f.Size)
	if f.Job == "" {
		r.fault(Path{}, strict.Missing, "the job has no name; add a line such as: job: Summer blouse",
			"der Auftrag hat keinen Namen; geben Sie ihm einen, etwa: Sommerbluse")
	}
	if !r.units() {
		return nil, r.faults.OrNil()
	}
	r.currency()
	r.cloths()
	wearers := r.wearers()
	for _, one := range f.Wearers {
		r.work.Wearers = append(r.work.Wearers, string(one.Name))
	}
	if len(wearers) == 1 {
		r.work.Body, r.work.Derived = wearers[0].body, wearers[0].derived
	}
	if len(f.Garments) == 0 {
		r.fault(strict.Top("garments"), strict.Missing,
			"the job has no garments, so there is nothing to cut; add them "+
				"under garments:",
			"im Auftrag steht kein Kleidungsstück, also ist nichts zuzuschneiden; nehmen Sie eines auf")
	}
	r.garments(wearers)
	if r.ended != nil {
		return nil, r.ended
	}
	r.emptyCloths()
	r.namedOnCloths()
	r.handLaidThere()
	r.unsureMatches()
	r.quote()
	if err := r.faults.OrNil(); err != nil {
		return nil, err
	}
	return &r.work, nil
}

func (r *resolver) units() bool {
	if r.file.Units == "" {
		r.fault(Path{}, strict.Missing, "the job does not say its units; add a line: units: cm (or mm, in)",
			"der Auftrag sagt nicht, in welcher Einheit er misst; wählen Sie cm, mm oder in")
		return false
	}
	unit, err := measure.ParseUnit(string(r.file.Units))
	if err != nil {
		r.fault(strict.Top("units"), strict.Malformed, "units: %s", "Einheit: %s", err)
		return false
	}
	r.work.Unit, r.Unit = unit, unit
	return true
}
