/** DXF in both directions against ezdxf, a general library that knows nothing of us: Debian's package python3-ezdxf. */
package trueseam.checks.dxf;
