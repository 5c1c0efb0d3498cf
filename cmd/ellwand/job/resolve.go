package job

import (
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/quote"
	"ellwand/pieces/measure"
)

// resolver turns a file into work, collecting every fault on the way.
type resolver struct {
	file   *File
	faults *Faults
	work   Work
	// wearing is the body that garments are being drafted for.
	wearing wearer
	// shorter is a part of a garment that is drafted shorter than written.
	shorter shortening
	// lays counts what is cut from each cloth.
	lays lays
	// rate is what an hour of making costs unless it says otherwise; isRated says
	// that the job gives one, be it 0.
	rate    quote.Money
	isRated bool
}

// Resolve parses the measurements, drafts the garments and makes the cloths.
// The error is *Faults: everything found wrong, with its line.
func (f *File) Resolve() (*Work, error) { return f.resolve(shortening{}) }

func (f *File) resolve(shorter shortening) (*Work, error) {
	r := &resolver{file: f, faults: &Faults{File: f.name}, shorter: shorter, lays: lays{}}
	r.work.File, r.work.file = f.name, f
	r.work.Name, r.work.Client, r.work.Size = string(f.Job), string(f.Client), string(f.Size)
	if f.Job == "" {
		r.fault(Path{}, strict.Missing, "the job has no name; add a line such as: job: Summer blouse")
	}
	if !r.units() {
		return nil, r.faults.OrNil()
	}
	r.currency()
	r.cloths()
	wearers := r.wearers()
	if len(wearers) == 1 {
		r.work.Body, r.work.Derived = wearers[0].body, wearers[0].derived
	}
	if len(f.Garments) == 0 {
		r.fault(strict.Top("garments"), strict.Missing, "the job has no garments, so there is nothing to cut; add them under garments:")
	}
	r.garments(wearers)
	r.emptyCloths()
	r.namedOnCloths()
	r.quote()
	if err := r.faults.OrNil(); err != nil {
		return nil, err
	}
	return &r.work, nil
}

func (r *resolver) units() bool {
	if r.file.Units == "" {
		r.fault(Path{}, strict.Missing, "the job does not say its units; add a line: units: cm (or mm, in)")
		return false
	}
	unit, err := measure.ParseUnit(string(r.file.Units))
	if err != nil {
		r.fault(strict.Top("units"), strict.Malformed, "units: %s", err)
		return false
	}
	r.work.Unit = unit
	return true
}

// fault notes a fault of the value at a path.
func (r *resolver) fault(path Path, kind strict.Kind, format string, args ...any) {
	r.faults.List = append(r.faults.List, r.file.fault(path, kind, format, args...))
}

// values reads the values of the job.
func (r *resolver) values() strict.Values {
	return strict.Values{Unit: r.work.Unit, Note: func(path Path, kind strict.Kind, text string) {
		r.fault(path, kind, "%s", text)
	}}
}

// length parses a measurement that may be zero; what names it in a fault.
func (r *resolver) length(path Path, what string, text Measure) (float64, bool) {
	return r.values().Length(path, what, text)
}

// positive parses a measurement above zero.
func (r *resolver) positive(path Path, what string, text Measure) (float64, bool) {
	return r.values().Positive(path, what, text)
}

// optional parses a measurement that is 0 when it is not given. One that is
// given as 0 is refused: the draft would take it for its usual value.
func (r *resolver) optional(path Path, what string, text Measure) float64 {
	if text == "" {
		return 0
	}
	value, _ := r.positive(path, what, text)
	return value
}

// fullness parses how many times its finished length a piece is gathered
// from; 0 when it is not given.
func (r *resolver) fullness(path Path, what string, text Text) float64 {
	if text == "" {
		return 0
	}
	times, err := strconv.ParseFloat(strings.Replace(string(text), ",", ".", 1), 64)
	if err != nil || !(times >= 1 && times <= 10) {
		r.fault(path, strict.OutOfRange, "%s: the fullness is %q; it must be a number from 1 to 10 (1.5 to 3 is usual)", what,
			string(text))
		return 0
	}
	return times
}

// count parses a whole number from 1; an empty one is 1.
func (r *resolver) count(path Path, what string, text Count) int {
	return r.values().Count(path, what, text)
}

// yes parses true, false, yes or no; an empty one is no.
func (r *resolver) yes(path Path, what string, text YesNo) bool {
	return r.values().Yes(path, what, text)
}

func joined(names []string) string { return strings.Join(names, ", ") }
