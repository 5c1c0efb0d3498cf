package job

import (
	"slices"

	"ellwand/draft"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
)

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
		r.shorten(path, garment, "whole", path.Key("bodice").Key("below_waist"), &o.BelowWaist, 0)
	}
	if o := request.Skirt; o != nil {
		r.shorten(path, garment, "skirt", path.Key("skirt").Key("length"), &o.Length, skirt.UsualLength)
	}
	if o := request.Trousers; o != nil {
		r.shorten(path, garment, "trousers", path.Key("trousers").Key("length"), &o.Length,
			usual(draft.OutsideLegLength, usualTrouserClear))
	}
	if o := request.StraightCut; o != nil {
		r.shorten(path, garment, "whole", path.Key("straight_cut").Key("length"), &o.Length, 0)
	}
	if o := request.Sleeve; o != nil {
		r.shorten(path, garment, "sleeve", path.Key("sleeve").Key("length"), &o.Length, usual(draft.ShoulderToWrist, 0))
	}
	for i := range request.Parts {
		if o := &request.Parts[i]; o.Kind == part.GatheredSkirt || o.Kind == part.StraightPanel {
			name := o.Name
			if name == "" {
				name = string(o.Kind)
			}
			r.shorten(path, garment, name, path.Key("parts").Entry(i).Key("depth"), &o.Depth, 0)
		}
	}
}

// shorten notes a length; one that is not given and has no usual value cannot
// be shortened.
func (r *resolver) shorten(path Path, garment, what string, at Path, length *float64, usual float64) {
	now := *length
	if now == 0 {
		now = usual
	}
	if now <= 0 {
		return
	}
	known := Shortening{Garment: garment, Part: what, Length: now, path: path, At: at}
	same := func(s Shortening) bool { return s.path.ID() == path.ID() && s.Part == what }
	if !slices.ContainsFunc(r.work.Shortenings, same) {
		r.work.Shortenings = append(r.work.Shortenings, known)
	}
	if r.shorter.by > 0 && same(r.shorter.Shortening) {
		*length = now - r.shorter.by
	}
}
