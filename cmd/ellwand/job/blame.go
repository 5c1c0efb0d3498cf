package job

import (
	"strings"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/draft/subject"
)

// sections of a request by the keys of a garment.
var sections = map[draft.Section]string{
	draft.BodiceSection: "bodice", draft.SleeveSection: "sleeve", draft.SkirtSection: "skirt",
	draft.TrousersSection:    "trousers",
	draft.StraightCutSection: "straight_cut", draft.PartsSection: "parts", draft.LiningsSection: "linings",
	draft.InterfacingsSection: "interfacings", draft.AllowancesSection: "allowances",
}

// options by their keys.
var options = map[subject.Subject]string{
	subject.Method: "method", subject.Fit: "fit", subject.Dart: "dart", subject.Princess: "princess",
	subject.Yoke: "yoke",
	subject.Back: "back", subject.Front: "front", subject.Extension: "extension", subject.NeckWider: "neck_wider",
	subject.FrontNeckLower: "front_neck_lower", subject.BackNeckLower: "back_neck_lower",
	subject.BelowWaist:    "below_waist",
	subject.StraightWaist: "straight_waist", subject.BustEase: "bust_ease", subject.WaistEase: "waist_ease",
	subject.HipEase: "hip_ease",

	subject.Style: "style", subject.Reach: "reach", subject.HeadFullness: "head_fullness",
	subject.HemFullness: "hem_fullness",
	subject.Length:      "length", subject.Ease: "ease", subject.HeadHeight: "head_height",
	subject.BicepEase: "bicep_ease", subject.WristWidth: "wrist_width",

	subject.Shape: "shape", subject.Vent: "vent", subject.Darts: "darts", subject.Flare: "flare",
	subject.Gores: "gores",
	subject.Tiers: "tiers", subject.Fullness: "fullness", subject.Pleats: "pleats",
	subject.PanelWidth: "panel_width",

	subject.HemWidth: "hem_width", subject.Opening: "opening", subject.Elastic: "elastic",
	subject.Pocket: "pocket",
	subject.Width:  "width", subject.Depth: "depth", subject.Flat: "flat",

	subject.Kind: "kind", subject.Name: "name", subject.Stand: "stand", subject.Overlap: "overlap",
	subject.Of: "of", subject.Edge: "edge", subject.Grain: "grain", subject.Joins: "joins",
	subject.Shorter: "shorter", subject.BackPleat: "back_pleat", subject.Reduce: "reduce", subject.Cut: "cut",
}

// blame finds the place in the file that a fault of the draft is about: the
// first of its subjects that stands there, in the garment or in the body of the
// wearer; or else the block that was asked for.
func (r *resolver) blame(garment, wearer Path, fault draft.Fault) Path {
	block := r.placeOf(garment, fault.Entry)
	bodyAlone := len(fault.Subjects) > 0
	for _, s := range fault.Subjects {
		path := block.Key(options[s])
		if name, measured := draft.MeasurementOf(s); measured {
			path = r.writtenKey(wearer.Key("body"), bodyKey(name))
		} else {
			bodyAlone = false
		}
		if r.file.lines.Has(path) {
			return path
		}
	}
	if !bodyAlone {
		return block
	}
	for _, key := range []string{"body", "size", "table"} {
		if path := wearer.Key(key); r.file.lines.Has(path) {
			return path
		}
	}
	return block
}

// placeOf is where in the file the place of a request was asked for.
func (r *resolver) placeOf(garment Path, place draft.Entry) Path {
	section, known := sections[place.Section]
	if !known {
		return garment
	}
	path := garment.Key(section)
	switch place.Section {
	case draft.PartsSection, draft.LiningsSection, draft.InterfacingsSection:
		return path.Entry(place.Index)
	case draft.AllowancesSection:
		if own := r.writtenKey(path, place.Name); r.file.lines.Has(own) {
			return own
		}
		return r.writtenKey(strict.Top(section), place.Name)
	}
	return path
}

// writtenKey is the path of a key as it is written there: with other capitals,
// hyphens or spaces perhaps.
func (r *resolver) writtenKey(inside Path, name string) Path {
	for _, path := range r.file.lines.Within(inside) {
		if strict.Plain(path[len(path)-1].Key) == strict.Plain(name) {
			return path
		}
	}
	return inside.Key(strings.ReplaceAll(name, " ", "_"))
}
