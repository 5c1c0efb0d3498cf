package draft

import (
	"ellwand/draft/subject"
	"ellwand/pieces/language"
)

// Measurement is a body measurement, by its term in ISO 8559-1
// [source.ISO8559].
type Measurement string

// The measurements that blocks are drafted from.
const (
	BustGirth            Measurement = "bust girth"
	WaistGirth           Measurement = "waist girth"
	HipGirth             Measurement = "hip girth"
	NeckBaseGirth        Measurement = "neck base girth"
	BackNeckPointToWaist Measurement = "back neck point to waist"
	ShoulderLength       Measurement = "shoulder length"
	AcrossBackWidth      Measurement = "across back width"
	AcrossFrontWidth     Measurement = "across front width"
	ScyeDepth            Measurement = "scye depth"
	ShoulderToWrist      Measurement = "shoulder to wrist"
	UpperArmGirth        Measurement = "upper arm girth"
	WristGirth           Measurement = "wrist girth"
	WaistToHip           Measurement = "waist to hip"
	BodyRise             Measurement = "body rise"
	InsideLegLength      Measurement = "inside leg length"
	OutsideLegLength     Measurement = "outside leg length"
	// Height is the stature of ISO 8559-1, by its name in EN 13402-1. Nothing
	// is drafted from it: it is there for lengths to be derived from.
	Height Measurement = "height"
)

// germanMeasurements are their words in German; in English they are the terms themselves.
var germanMeasurements = map[Measurement]string{
	BustGirth: "Brustumfang", WaistGirth: "Taillenumfang", HipGirth: "Hüftumfang", NeckBaseGirth: "Halsansatzumfang",
	BackNeckPointToWaist: "Rückenlänge bis Taille", ShoulderLength: "Schulterlänge", AcrossBackWidth: "Rückenbreite",
	AcrossFrontWidth: "Brustbreite vorn", ScyeDepth: "Armlochtiefe", ShoulderToWrist: "Armlänge",
	UpperArmGirth: "Oberarmumfang", WristGirth: "Handgelenkumfang", WaistToHip: "Hüfttiefe", BodyRise: "Sitzhöhe",
	InsideLegLength: "innere Beinlänge", OutsideLegLength: "äußere Beinlänge", Height: "Körpergröße",
}

// In words the measurement in a language.
func (m Measurement) In(l language.Language) string {
	if l == language.German {
		return germanMeasurements[m]
	}
	return string(m)
}

// girths are the measurements taken round the body.
var girths = []Measurement{BustGirth, WaistGirth, HipGirth, NeckBaseGirth, UpperArmGirth, WristGirth}

// bodySubjects are the measurements as subjects of a refusal.
var bodySubjects = map[Measurement]subject.Subject{
	Height: subject.Height, BustGirth: subject.BustGirth, WaistGirth: subject.WaistGirth, HipGirth: subject.HipGirth,
	NeckBaseGirth: subject.NeckBaseGirth, BackNeckPointToWaist: subject.BackNeckPointToWaist,
	ShoulderLength:  subject.ShoulderLength,
	AcrossBackWidth: subject.AcrossBackWidth, AcrossFrontWidth: subject.AcrossFrontWidth, ScyeDepth: subject.ScyeDepth,
	ShoulderToWrist: subject.ShoulderToWrist, UpperArmGirth: subject.UpperArmGirth, WristGirth: subject.WristGirth,
	WaistToHip: subject.WaistToHip, BodyRise: subject.BodyRise, InsideLegLength: subject.InsideLegLength,
	OutsideLegLength: subject.OutsideLegLength,
}

// SubjectOf a measurement.
func SubjectOf(name Measurement) subject.Subject { return bodySubjects[name] }

// MeasurementOf a subject; ok is false for one that is an option.
func MeasurementOf(s subject.Subject) (name Measurement, ok bool) {
	for name, known := range bodySubjects {
		if known == s {
			return name, true
		}
	}
	return "", false
}
