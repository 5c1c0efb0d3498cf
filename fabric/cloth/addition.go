package cloth

// Addition is added to a length: a share of it, a length, or both. The zero value
// adds nothing.
type Addition struct {
	Share  float64 // 0.05 is 5 %; not negative
	Length float64 // mm; not negative
}

// Of is what is added to a length, mm.
func (a Addition) Of(length float64) float64 { return float64(a.Share*length) + a.Length }

// Within is the length that with the addition comes to another one, mm.
func (a Addition) Within(length float64) float64 { return (length - a.Length) / (1 + a.Share) }

// UsualHandLaying is what laying and chalking by hand takes more than is reckoned: 2 %
// of the length [source.OwnChoice]. A chalk line is about 2 mm wide, and 2 mm between
// all pieces made the layouts of the example jobs longer by 0.3 % in the median and by
// 2.0 % at most; 3 mm by 0.7 % and 3.0 % [source.Measured].
var UsualHandLaying = Addition{Share: 0.02}
