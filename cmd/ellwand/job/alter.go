package job

import (
	"slices"

	"ellwand/draft"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
)

// Shortening is a part of a garment that can be drafted shorter.
type Shortening struct {
	Garment string // as the file names it
	Part    string // "whole", "skirt", "trousers", "sleeve" or what the part is called
	Length  float64
	path    Path // of the garment
}

// shortening is one that is asked for.
type shortening struct {
	Shortening
	by float64
}

// usualTrouserClear is how far trousers end above the floor when no length is
// given, mm: as the trouser draft has it.
const usualTrouserClear = 20

// lengths notes what of a garment can be shortened, and shortens what is
// asked.
func (r *resolver) lengths(path Path, garment string, request *draft.Request) {
	usual := func(name draft.Measurement, less float64) float64 {
		value, _ := request.Body.Get(name)
		return max(0, value-less)
	}
	if o := request.Bodice; o != nil && o.BelowWaist > 0 {
		r.shorten(path, garment, "whole", &o.BelowWaist, 0)
	}
	if o := request.Skirt; o != nil {
		r.shorten(path, garment, "skirt", &o.Length, skirt.UsualLength)
	}
	if o := request.Trousers; o != nil {
		r.shorten(path, garment, "trousers", &o.Length, usual(draft.OutsideLegLength, usualTrouserClear))
	}
	if o := request.StraightCut; o != nil {
		r.shorten(path, garment, "whole", &o.Length, 0)
	}
	if o := request.Sleeve; o != nil {
		r.shorten(path, garment, "sleeve", &o.Length, usual(draft.ShoulderToWrist, 0))
	}
	for i := range request.Parts {
		if o := &request.Parts[i]; o.Kind == part.GatheredSkirt || o.Kind == part.StraightPanel {
			name := o.Name
			if name == "" {
				name = string(o.Kind)
			}
			r.shorten(path, garment, name, &o.Depth, 0)
		}
	}
}

// shorten notes a length; one that is not given and has no usual value cannot
// be shortened.
func (r *resolver) shorten(path Path, garment, what string, length *float64, usual float64) {
	now := *length
	if now == 0 {
		now = usual
	}
	if now <= 0 {
		return
	}
	known := Shortening{Garment: garment, Part: what, Length: now, path: path}
	same := func(s Shortening) bool { return s.path.ID() == path.ID() && s.Part == what }
	if !slices.ContainsFunc(r.work.Shortenings, same) {
		r.work.Shortenings = append(r.work.Shortenings, known)
	}
	if r.shorter.by > 0 && same(r.shorter.Shortening) {
		*length = now - r.shorter.by
	}
}

// Shortened resolves the job again with a part of a garment shorter by so
// much, mm. It fails where that cannot be drafted.
func (f *File) Shortened(s Shortening, by float64) (*Work, error) {
	return f.resolve(shortening{s, by})
}

// SmallerSizes of the job's table, the next first; none when the job is not
// drafted from a size of a table.
func (f *File) SmallerSizes() []string {
	if f.Size == "" || f.Table == "" {
		return nil
	}
	sizes := draft.Sizes(string(f.Table))
	at := slices.Index(sizes, string(f.Size))
	if at <= 0 {
		return nil
	}
	smaller := slices.Clone(sizes[:at])
	slices.Reverse(smaller)
	return smaller
}

// InSize resolves the job again in another size of its table.
func (f *File) InSize(size string) (*Work, error) {
	other := *f
	other.Size = Text(size)
	return other.Resolve()
}
