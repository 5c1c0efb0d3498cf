package fabric

// Repeat of the pattern of a cloth. The zero value is plain cloth.
type Repeat struct {
	// Along is the repeat of stripes that run across the cloth, mm along the
	// warp; Across that of stripes that run along it, mm across. Both make
	// checks; 0 is none.
	Along, Across float64
}
